namespace Byrelaw.Records.Herds;

/// <summary>Where a row of the records stands.</summary>
/// <param name="File">As shown.</param>
/// <param name="Line">From 1.</param>
public readonly record struct RecordPlace(string File, int Line);
