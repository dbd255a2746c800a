namespace Byrelaw.Loading;

/// <summary>Finds the programme's file that a folder of records belongs to: records have no words of their own.</summary>
public static class ProgrammeOf
{
    /// <summary>The one rule file in the folder or the one above whose <c>records</c> line names the folder; null where there is none.</summary>
    /// <exception cref="CannotDoException">There are several.</exception>
    public static string? Records(string folder, WorkFolder work)
    {
        var wanted = Path.TrimEndingDirectorySeparator(folder);
        string?[] places = [wanted, Path.GetDirectoryName(wanted)];
        var found = places.OfType<string>().SelectMany(place => Directory.EnumerateFiles(place, "*.byre")).Order(StringComparer.Ordinal)
            .Where(file => RecordsOf(file, work) == wanted).ToList();
        return found.Count switch
        {
            0 => null,
            1 => found[0],
            _ => throw new CannotDoException($"several programmes use these records: {string.Join(", ", found.Select(work.Show))}; choose one with --rules FILE"),
        };
    }

    private static string? RecordsOf(string file, WorkFolder work) =>
        RulebookReader.Read(file, new RuleFilesOnDisk(work))?.Rulebook.Records is { } keeping ? Path.TrimEndingDirectorySeparator(RecordsFolder.Of(keeping.Folder, file)) : null;
}
