using Byrelaw.Judging.Verdicts;
using Byrelaw.Language.Diagnostics;

namespace Byrelaw.Cli.Loading;

/// <summary>Animals that a programme names and the records do not have.</summary>
public static class UnknownAnimals
{
    private const string Code = "J0101";

    /// <summary>One error each, at its place in the programme's file.</summary>
    public static IEnumerable<Diagnostic> In(Draft draft) =>
        draft.Lists.SelectMany(list => list.Unknown.Select(number => Problem(number, list, draft)));

    private static Diagnostic Problem(string number, ListJudgement list, Draft draft)
    {
        var span = list.Choice.Span;
        var inLine = span.Text.IndexOf($"\"{number}\"", StringComparison.Ordinal);
        var start = span.Start + Math.Max(0, inLine);
        var line = span.File.LineAt(start);
        var near = NearestNumber.To(number, draft.Herd.Numbers);
        return new Diagnostic(
            Code, Severity.Error, span.File.Path, line, span.File.ColumnAt(start), inLine < 0 ? 1 : number.Length + 2,
            $"no animal `{number}` in {draft.Herd.AnimalsFile}", null, near is null ? null : $"did you mean `{near}`?", span.File.Line(line));
    }
}
