namespace Byrelaw.LanguageServer.Readings;

/// <summary>Problems as the protocol tells them.</summary>
internal static class EditorProblems
{
    /// <summary>What is wrong with each file that a document was read from, by path: what the reading itself says.</summary>
    public static Dictionary<string, List<(Diagnostic Diagnostic, EditorProblem Problem)>> Of(RootReading reading) => Of(reading, reading.View.Reading.Problems);

    /// <summary>Problems of the files that a document was read from, by path.</summary>
    public static Dictionary<string, List<(Diagnostic Diagnostic, EditorProblem Problem)>> Of(RootReading reading, IEnumerable<Diagnostic> problems)
    {
        var byPath = reading.View.Files.ToDictionary(file => reading.PathOf(file.Path), _ => new List<(Diagnostic, EditorProblem)>(), StringComparer.Ordinal);
        var files = reading.View.Files.ToDictionary(file => file.Path, StringComparer.Ordinal);
        foreach (var diagnostic in problems)
        {
            if (files.TryGetValue(diagnostic.File, out var file))
            {
                byPath[reading.PathOf(diagnostic.File)].Add((diagnostic, Of(diagnostic, file)));
            }
        }

        return byPath;
    }

    /// <summary>The offset of a place that a message names.</summary>
    public static int Offset(SourceFile file, int line, int column) =>
        line > file.LineCount ? file.Text.Length : Math.Min(file.StartOf(line) + column - 1, file.Text.Length);

    private static EditorProblem Of(Diagnostic diagnostic, SourceFile file)
    {
        var start = Offset(file, diagnostic.Line, diagnostic.Column);
        // What is missing at a line's end is marked there, and not on the next line.
        var end = Math.Min(start + diagnostic.Length, Math.Max(start, file.StartOf(diagnostic.Line) + file.Line(diagnostic.Line).Length));
        var range = TextLines.Of(file).Range(start, end);
        return new EditorProblem(range, diagnostic.Severity == Severity.Error ? 1 : 2, diagnostic.Code, "byrelaw", Message(diagnostic));
    }

    private static string Message(Diagnostic diagnostic)
    {
        var shown = diagnostic.Shown is null ? "" : $"\nfor example:\n  {diagnostic.Shown.Replace("\n", "\n  ", StringComparison.Ordinal)}";
        var help = diagnostic.Help is null ? "" : $"\nhelp: {diagnostic.Help}";
        return diagnostic.Message + shown + help;
    }
}
