namespace Byrelaw.Records.Problems;

/// <summary>What can be wrong with what a row says happened.</summary>
internal static class KindProblems
{
    private const string Expected = "expected an event, a measure or a test that the rule files declare";

    public static Diagnostic NoKind(RowText row, int cell) => row.Problem(
        cell, "R0141", Severity.Error, "this row does not say what happened", Expected);

    public static Diagnostic Undeclared(RowText row, int cell, string? nearest, IReadOnlyList<string> hinted) => row.Problem(
        cell, "R0142", Severity.Error,
        $"no rule file declares `{row.Cells[cell].Value}`", Expected, KindAdvice.InRules(row.Cells[cell].Value, nearest, hinted));
}
