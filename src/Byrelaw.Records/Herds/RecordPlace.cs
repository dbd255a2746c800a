namespace Byrelaw.Records.Herds;

/// <summary>Where a row of the records stands.</summary>
/// <param name="File">As shown; of a workbook with its sheet: <c>herd.xlsx, Cows</c>.</param>
/// <param name="Line">From 1.</param>
public readonly record struct RecordPlace(string File, int Line)
{
    /// <summary>The cell of a workbook, such as <c>F14</c>; null where only the line is told.</summary>
    public string? Cell { get; init; }
}
