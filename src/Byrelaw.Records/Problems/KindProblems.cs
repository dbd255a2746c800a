namespace Byrelaw.Records.Problems;

/// <summary>What can be wrong with what a row says happened.</summary>
internal static class KindProblems
{
    private const string Expected = "expected an event, a measure or a test that the rule files declare";

    public static Diagnostic NoKind(RowText row, int cell) => row.Problem(
        cell, "R0141", Severity.Error, "this row does not say what happened", Expected);

    public static Diagnostic Undeclared(RowText row, int cell, string? nearest) => row.Problem(
        cell, "R0142", Severity.Error,
        $"no rule file declares `{row.Cells[cell].Value}`", Expected,
        (nearest is null ? "" : $"perhaps `{nearest}` is meant; else ")
        + $"declare it, such as `event {row.Cells[cell].Value}`, or pass over it with `leave out {row.Cells[cell].Value}` under `records`");
}
