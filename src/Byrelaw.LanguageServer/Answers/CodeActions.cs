using Byrelaw.Workshop.Correcting;

namespace Byrelaw.LanguageServer.Answers;

/// <summary>Offers the change that mends a problem, where there is one.</summary>
internal static class CodeActions
{
    private const string QuickFix = "quickfix";

    /// <summary>The mends of all problems that touch a stretch of a document.</summary>
    public static List<CodeAction> For(Workspace workspace, CodeActionParams asked)
    {
        var path = FilePaths.Of(asked.TextDocument.Uri);
        if (asked.Context?.Only is { Length: > 0 } only && !only.Contains(QuickFix))
        {
            return [];
        }

        var actions = new List<CodeAction>();
        foreach (var (reading, _) in workspace.ReadingsWith(path))
        {
            foreach (var (diagnostic, problem) in EditorProblems.Of(reading)[path].Where(found => Touches(found.Problem.Range, asked.Range)))
            {
                if (reading.View.Reading.Corrected(diagnostic).Correction is { } correction && !actions.Exists(other => other.Title == correction.Title && other.Diagnostics[0] == problem))
                {
                    actions.Add(new CodeAction(Capital(correction.Title), QuickFix, [problem], IsPreferred: true, Edit(workspace, reading, correction)));
                }
            }
        }

        return actions;
    }

    private static WorkspaceEdit Edit(Workspace workspace, RootReading reading, Correction correction)
    {
        var changes = new Dictionary<string, List<TextEdit>>();
        foreach (var replacement in correction.Replacements)
        {
            var file = reading.View.Files.First(file => file.Path == replacement.File);
            var start = EditorProblems.Offset(file, replacement.Line, replacement.Column);
            var uri = workspace.Files.Uri(reading.PathOf(file.Path));
            changes.TryAdd(uri, []);
            changes[uri].Add(new TextEdit(TextLines.Of(file).Range(start, Math.Min(start + replacement.Length, file.Text.Length)), replacement.Text));
        }

        return new WorkspaceEdit(changes);
    }

    private static bool Touches(Protocol.Range a, Protocol.Range b) => !IsBefore(a.End, b.Start) && !IsBefore(b.End, a.Start);

    private static bool IsBefore(Position a, Position b) => (a.Line, a.Character).CompareTo((b.Line, b.Character)) < 0;

    private static string Capital(string title) => title.Length > 0 ? char.ToUpperInvariant(title[0]) + title[1..] : title;
}
