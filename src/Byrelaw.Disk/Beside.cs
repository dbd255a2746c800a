namespace Byrelaw.Disk;

/// <summary>Where the program keeps what it is writing: beside the place it is for, hidden, under names that no other program gives.</summary>
internal static class Beside
{
    /// <summary>What will take the place.</summary>
    public const string New = "byrelaw-new";

    /// <summary>What had the place, for the moment between two steps.</summary>
    public const string Old = "byrelaw-old";

    /// <summary>Held by the run that is writing.</summary>
    public const string Lock = "byrelaw-lock";

    /// <summary>Such a name for a place.</summary>
    /// <param name="place">The full path of a file or a folder.</param>
    /// <param name="what">One of the above.</param>
    public static string Of(string place, string what) => Path.Combine(Path.GetDirectoryName(place)!, $".{Path.GetFileName(place)}.{what}");

    /// <summary>The place that such a path is for; null for any other path.</summary>
    public static string? PlaceOf(string path, string what)
    {
        var name = Path.GetFileName(path);
        return name.Length > what.Length + 2 && name[0] == '.' && name.EndsWith($".{what}", StringComparison.Ordinal)
            ? Path.Combine(Path.GetDirectoryName(path)!, name[1..^(what.Length + 1)]) : null;
    }

    /// <summary>Takes away what is there, file, link or folder.</summary>
    public static void Remove(string path)
    {
        if (Directory.Exists(path) && new DirectoryInfo(path).LinkTarget is null)
        {
            Directory.Delete(path, recursive: true);
        }
        else
        {
            File.Delete(path);
        }
    }
}
