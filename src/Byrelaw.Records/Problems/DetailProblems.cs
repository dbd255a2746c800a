namespace Byrelaw.Records.Problems;

/// <summary>What can be wrong with the details of an entry.</summary>
internal static class DetailProblems
{
    public static Diagnostic NoSuchDetail(RowText row, int cell, Kind kind, string column, Kind? other = null) => row.Problem(
        cell, "R0165", Severity.Warning,
        $"`{row.Cells[cell].Value}` in the column `{column}`, which {kind.Name} does not have", "expected nothing there",
        other is not null ? $"if it was {other.Name}, write that as its kind; until then {other.Name} is not known of her on that day"
        : $"declare it, as in `add to {kind.Name}  with {column} is text`, if a rule is to know it; otherwise it does no harm");

    public static Diagnostic NotKnown(RowText row, int cell, string detail) => row.Problem(
        cell, "R0166", Severity.Warning, $"`{row.Cells[cell].Value}` is no {detail}", "expected what it was, or nothing", $"write the {detail}, or leave the cell blank if nobody wrote it down");

    /// <summary>The entry stands all the same.</summary>
    public static Diagnostic Lost(Diagnostic problem, Kind kind) =>
        problem with { Help = $"{(problem.Help is { } help ? $"{help}; " : "")}until then the {kind.Name} counts, and this of it is not known" };
}
