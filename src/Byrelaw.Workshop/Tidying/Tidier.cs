using Byrelaw.Workshop.Tidying.Printing;

namespace Byrelaw.Workshop.Tidying;

/// <summary>
/// Prints a rule file the one way: one spelling for each idea, everything in its place, comments kept. It says the same
/// as before, and each run proves that.
/// </summary>
public static class Tidier
{
    /// <summary>Tidies one file, which is read with all that it uses; writes nothing.</summary>
    /// <param name="path">The file.</param>
    /// <param name="files">Where files come from: a disk, or an editor's open documents.</param>
    /// <returns>The tidied text, or why the file is left alone; null where there is no such file.</returns>
    public static TidyResult? Tidy(string path, IRuleFiles files)
    {
        if (RulebookReader.Read(path, files) is not { Parts: { } parts } reading)
        {
            return null;
        }

        var file = parts.Files[0];
        var errors = Errors(reading);
        if (!errors.IsEmpty)
        {
            return new TidyResult(file.Source, null) { Errors = errors };
        }

        var text = FilePrinter.Print(WrittenFile.Of(file, parts));
        if (Difference(reading, RulebookReader.Read(path, ReplacedFiles.With(files, path, text))!) is { } difference)
        {
            return new TidyResult(file.Source, null) { WouldChange = difference };
        }

        var bytes = files.Read(path);
        return new TidyResult(file.Source, text) { IsTidy = bytes.AsSpan().SequenceEqual(Encoding.UTF8.GetBytes(text)) };
    }

    /// <summary>All errors, and signs that no line may hold in parts that this version only skips.</summary>
    private static ImmutableArray<Diagnostic> Errors(RulebookReading reading)
    {
        ImmutableArray<Diagnostic> errors = [.. reading.Problems.Where(problem => problem.Severity == Severity.Error)];
        return !errors.IsEmpty ? errors : [.. reading.Parts!.Files[0].Lines.SelectMany(line => line.Tokens).Select(token => token.Problem).OfType<Diagnostic>()];
    }

    private static string? Difference(RulebookReading before, RulebookReading after) =>
        Errors(after).IsEmpty ? Proof.Difference(Proof.Of(before), Proof.Of(after)) : "whether it can be read";
}
