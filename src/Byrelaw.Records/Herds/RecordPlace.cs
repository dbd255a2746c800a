namespace Byrelaw.Records.Herds;

/// <summary>Where a row of the records stands.</summary>
/// <param name="File">As shown; of a workbook with its sheet.</param>
/// <param name="Line">From 1: the line of a text, the row of a sheet.</param>
public readonly record struct RecordPlace(string File, int Line);
