namespace Byrelaw.Language.Binding.RecordSources;

/// <summary>What may be said of a file's letters and headings.</summary>
internal static class SourceLetters
{
    /// <summary>No heading stands deeper in a sheet that people use.</summary>
    public const int MostHeadingRow = 1000;

    private static readonly FrozenSet<string> Known = new[] { "utf-8", "utf-16", "windows-1252", "iso-8859-1", "latin-1" }.ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    /// <summary>Whether files in these letters can be read.</summary>
    public static bool IsKnown(string name) => Known.Contains(name);
}
