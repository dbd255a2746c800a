namespace Byrelaw.Judging.Tests.LessInformation.Files;

/// <summary>The two files of a folder of records, as lines with their ends.</summary>
internal sealed record RecordFiles(ImmutableArray<string> Animals, ImmutableArray<string> Events)
{
    public byte[] AnimalBytes => Encoding.UTF8.GetBytes(string.Concat(Animals));

    public byte[] EventBytes => Encoding.UTF8.GetBytes(string.Concat(Events));

    public static RecordFiles Read(string folder) => new(Lines(Path.Combine(folder, "animals.csv")), Lines(Path.Combine(folder, "events.csv")));

    /// <summary>The cells of a line; none of the farms that are tried has a comma within one.</summary>
    public static string[] Cells(string line) => line.TrimEnd('\n', '\r').Split(',');

    public static string Line(IEnumerable<string> cells) => string.Join(',', cells) + "\n";

    private static ImmutableArray<string> Lines(string file) =>
        [.. File.ReadAllText(file).ReplaceLineEndings("\n").Split('\n').SkipLast(1).Select(line => line + "\n")];
}
