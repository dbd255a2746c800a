namespace Byrelaw.Cli.Loading;

/// <summary>Finds the programme's file that a folder of records belongs to: records have no words of their own.</summary>
public static class ProgrammeOf
{
    /// <summary>The one rule file in the folder or the one above whose <c>records</c> line names the folder.</summary>
    /// <exception cref="CannotDoException">There is none, or there are several.</exception>
    public static string Records(string folder, Doors doors)
    {
        var wanted = Path.TrimEndingDirectorySeparator(folder);
        string?[] places = [wanted, Path.GetDirectoryName(wanted)];
        var found = places.OfType<string>().SelectMany(place => Directory.EnumerateFiles(place, "*.byre")).Order(StringComparer.Ordinal)
            .Where(file => RecordsFoldersOf(file).Any(named => named == wanted)).ToList();
        return found.Count switch
        {
            1 => found[0],
            0 => throw new CannotDoException($"no programme's file in {doors.Show(wanted)} or above it has a line: records \"{Path.GetFileName(wanted)}\"; "
                + "name the programme with --rules FILE, so that the words of the records are known"),
            _ => throw new CannotDoException($"several programmes use these records: {string.Join(", ", found.Select(doors.Show))}; choose one with --rules FILE"),
        };
    }

    private static IEnumerable<string> RecordsFoldersOf(string file) =>
        File.ReadLines(file).Select(line => line.Trim()).Where(line => line.StartsWith("records ", StringComparison.Ordinal))
            .Select(line => line["records ".Length..].Split('#')[0].Trim().Trim('"'))
            .Select(named => Path.TrimEndingDirectorySeparator(Path.GetFullPath(named.Replace('/', Path.DirectorySeparatorChar), Path.GetDirectoryName(file)!)));
}
