namespace Byrelaw.Records.Problems;

/// <summary>What can be wrong with what is true of an animal without a date.</summary>
internal static class FactProblems
{
    public static Diagnostic Sex(RowText row, int cell) => row.Problem(
        cell, "R0171", Severity.Error, $"`{row.Cells[cell].Value}` is not a sex", "expected `F`, `M` or `steer`, or nothing where it is not known");

    public static Diagnostic Parity(RowText row, int cell) => row.Problem(
        cell, "R0172", Severity.Error, $"`{row.Cells[cell].Value}` is not a parity", "expected how often she has calved, a whole number from 0 to 20");

    public static Diagnostic NotAValue(RowText row, int cell, Fact fact, string? nearest) => row.Problem(
        cell, "R0173", Severity.Error,
        $"`{row.Cells[cell].Value}` is not a declared value of {fact.Name}",
        $"expected {ColumnMap.Listed(fact.Values, "or")}",
        nearest is null ? null : $"perhaps `{nearest}` is meant");

    public static Diagnostic NotANumber(RowText row, int cell, Fact fact) => row.Problem(
        cell, "R0174", Severity.Error,
        $"`{row.Cells[cell].Value}` is not a number",
        fact.Unit is { } unit ? $"expected {fact.Name} in `{unit.Symbol}`" : $"expected {fact.Name} as a number",
        NumberAdvice.For(row.Cells[cell].Value));

    public static Diagnostic NotAText(RowText row, int cell, Fact fact) => row.Problem(
        cell, "R0177", Severity.Error, $"`{row.Cells[cell].Value}` cannot be read", $"expected {fact.Name}");

    public static Diagnostic IdentityCode(RowText row, int cell) => row.Problem(
        cell, "R0175", Severity.Error,
        $"`{row.Cells[cell].Value}` starts with `{row.Cells[cell].Value[..3]}`, which no country and no manufacturer has (ISO 11784)",
        "expected the 15 digits as the tag or the reader shows them", "read the tag again");

    public static Diagnostic IdentityTooLarge(RowText row, int cell) => row.Problem(
        cell, "R0176", Severity.Error,
        $"`{row.Cells[cell].Value}` ends in a number that is too large (ISO 11784)",
        string.Create(CultureInfo.InvariantCulture, $"expected the last 12 digits to be {Iso11784.LargestNumber} or less"),
        "read the tag again");
}
