namespace Byrelaw.Cli.Files;

/// <summary>What a folder remembers of the packs unpacked into it: the newest one's issue, of each file that packs open there.</summary>
internal static class UnpackedFrom
{
    /// <summary>The file's name.</summary>
    public const string FileName = "unpacked-packs.txt";

    private const string Head = "# Which pack was unpacked here last, so that byrelaw unpack can say when an older one comes.";

    /// <summary>The issue that was unpacked last; null for none.</summary>
    /// <param name="folder">Full path.</param>
    /// <param name="opens">The file that the pack opens.</param>
    public static PackIssue? Last(string folder, string opens) => Lines(folder).Where(line => line.Opens == opens).Select(line => line.Issue).LastOrDefault();

    /// <summary>The file as it is once a pack is unpacked.</summary>
    public static FileToWrite With(string folder, Pack pack)
    {
        var lines = Lines(folder).Where(line => line.Opens != pack.Opens).Append((pack.Opens, pack.Issue));
        return new FileToWrite(FileName, Encoding.UTF8.GetBytes(Head + "\n" + string.Concat(lines.Select(line => $"{line.Issue}: {line.Opens}\n"))));
    }

    private static IEnumerable<(string Opens, PackIssue Issue)> Lines(string folder)
    {
        var bytes = RegularFile.Read(Path.Combine(folder, FileName)) ?? [];
        foreach (var line in Encoding.UTF8.GetString(bytes).Split('\n', StringSplitOptions.TrimEntries))
        {
            var at = line.IndexOf(": ", StringComparison.Ordinal);
            if (at > 0 && PackIssue.Read(line[..at]) is { } issue)
            {
                yield return (line[(at + 2)..], issue);
            }
        }
    }
}
