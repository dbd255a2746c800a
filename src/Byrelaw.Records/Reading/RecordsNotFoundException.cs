namespace Byrelaw.Records.Reading;

/// <summary>There is no such folder of records, or a file is missing from it.</summary>
public sealed class RecordsNotFoundException(string message) : Exception(message);
