namespace Byrelaw.Judging.Verdicts;

/// <summary>A record that an answer rests on.</summary>
/// <param name="Kind">The event, measure or test; null for a fact.</param>
/// <param name="Fact">The fact's name, such as <c>breed</c>, <c>born</c>, <c>parity</c>, <c>sex</c>; null for an event.</param>
/// <param name="Date">The day; null for a fact.</param>
/// <param name="Value">What was recorded, ready to print with its unit (<c>95 umol/kg</c>, <c>negative</c>, <c>pending</c>); null for a plain event.</param>
/// <param name="File">As shown.</param>
/// <param name="Line">From 1.</param>
public sealed record Evidence(Kind? Kind, string? Fact, LocalDate? Date, string? Value, string File, int Line)
{
    /// <summary>The cell, where the file is a workbook's sheet; null for none.</summary>
    public string? Cell { get; init; }

    /// <summary>What more is on record of the entry, ready to print, such as <c>method hand</c>; null where nothing is.</summary>
    public string? Details { get; init; }
}
