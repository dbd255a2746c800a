using Byrelaw.Judging.Verdicts;
using Byrelaw.Language.Diagnostics;
using Byrelaw.Language.Sources;

namespace Byrelaw.Cli.Loading;

/// <summary>Animals that a programme or a waiver names and the records do not have.</summary>
public static class UnknownAnimals
{
    private const string Code = "J0101";
    private const string WaiverCode = "J0102";

    /// <summary>One error each, at its place in the programme's file.</summary>
    public static IEnumerable<Diagnostic> In(Draft draft) =>
        draft.Lists.SelectMany(list => list.Unknown.Select(number => Problem(Code, Severity.Error, number, list.Choice.Span, draft)))
            .Concat(draft.Rulebook.Waivers.Where(waiver => draft.Herd.Find(waiver.Animal) < 0)
                .Select(waiver => Problem(WaiverCode, Severity.Warning, waiver.Animal, waiver.Span, draft)));

    private static Diagnostic Problem(string code, Severity severity, string number, SourceSpan span, Draft draft)
    {
        var inLine = span.Text.IndexOf($"\"{number}\"", StringComparison.Ordinal);
        var start = span.Start + Math.Max(0, inLine);
        var line = span.File.LineAt(start);
        var near = NearestNumber.To(number, draft.Herd.Numbers);
        return new Diagnostic(
            code, severity, span.File.Path, line, span.File.ColumnAt(start), inLine < 0 ? 1 : number.Length + 2,
            $"no animal `{number}` in {draft.Herd.AnimalsFile}", null, near is null ? null : $"did you mean `{near}`?", span.File.Line(line));
    }
}
