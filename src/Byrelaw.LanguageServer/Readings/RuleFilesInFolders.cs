namespace Byrelaw.LanguageServer.Readings;

/// <summary>The rule files below the folders that are open in the editor.</summary>
internal static class RuleFilesInFolders
{
    private const int Most = 1000;

    private static readonly EnumerationOptions Options = new()
    {
        RecurseSubdirectories = true,
        MaxRecursionDepth = 8,
        IgnoreInaccessible = true,
        AttributesToSkip = FileAttributes.Hidden | FileAttributes.System | FileAttributes.ReparsePoint,
    };

    /// <summary>Their paths; not more than a thousand, however large the folders are.</summary>
    public static IEnumerable<string> Of(IEnumerable<string> folders) =>
        folders.Where(Directory.Exists).SelectMany(folder => Directory.EnumerateFiles(folder, "*.byre", Options)).Take(Most);
}
