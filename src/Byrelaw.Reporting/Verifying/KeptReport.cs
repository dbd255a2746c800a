namespace Byrelaw.Reporting.Verifying;

/// <summary>A draft's report as it lies in a folder now.</summary>
/// <param name="Folder">Paths in it start here.</param>
/// <param name="Draft">What it says of every animal, and what it was drawn up from.</param>
/// <param name="Edited">Files that are not as they were written.</param>
/// <param name="Missing">Files that are no longer there.</param>
public sealed record KeptReport(string Folder, DraftJson Draft, ImmutableArray<string> Edited, ImmutableArray<string> Missing)
{
    /// <summary>The file of a report that says what it was drawn up from.</summary>
    public const string DraftFile = "draft.json";

    /// <summary>Reads a report.</summary>
    /// <param name="path">Its folder, a file in that, or the output of <c>draft --format json</c> alone.</param>
    /// <returns>Null where it is none, or one of before reports could be verified.</returns>
    public static KeptReport? Read(string path)
    {
        var folder = Directory.Exists(path) ? path : Path.GetDirectoryName(path)!;
        var isFolder = File.Exists(Path.Combine(folder, ReportFolder.Manifest));
        var json = isFolder ? Path.Combine(folder, DraftFile) : path;
        if (!RegularFile.Exists(json) || DraftIn(json) is not { Inputs: not null } draft)
        {
            return null;
        }

        var files = isFolder ? ReportFolder.FilesIn(folder).Where(file => file.Digest is not null).ToList() : [];
        var there = files.ToLookup(file => RegularFile.Exists(Path.Combine(folder, file.Path)));
        return new KeptReport(
            folder, draft, [.. there[true].Where(file => ReportFolder.DigestOf(File.ReadAllBytes(Path.Combine(folder, file.Path))) != file.Digest).Select(file => file.Path)],
            [.. there[false].Select(file => file.Path)]);
    }

    private static DraftJson? DraftIn(string file)
    {
        try
        {
            using var stream = File.OpenRead(file);
            var draft = JsonSerializer.Deserialize(stream, JsonShapes.Readable.DraftJson);
            return draft is { Lists: not null, Inputs: { ProgrammeFile: not null, RecordsFolder: not null }, Rulebook: not null, Records: not null, JudgedWith: not null } ? draft : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
