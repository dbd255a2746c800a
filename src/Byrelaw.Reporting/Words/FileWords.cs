namespace Byrelaw.Reporting.Words;

/// <summary>Files of records as people call them: there are two, so the way to them only gets in the way.</summary>
public static class FileWords
{
    /// <summary><c>events.csv</c> for <c>farm/records/events.csv</c>.</summary>
    public static string Short(string path) => path[(path.LastIndexOf('/') + 1)..];
}
