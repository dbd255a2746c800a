namespace Byrelaw.Records.Reading;

/// <summary>Rows that are supposed stand behind the file's last line, under a heading of their own.</summary>
internal static class SupposedLines
{
    /// <summary>Reads them.</summary>
    /// <param name="supposed">Which.</param>
    /// <param name="after">The last line of the file.</param>
    /// <param name="like">How the file itself is read.</param>
    /// <param name="blockSize">In bytes.</param>
    /// <param name="problems">Takes what is wrong.</param>
    public static EventStage[] Read(this Supposed supposed, int after, EventReading like, int blockSize, List<Diagnostic> problems)
    {
        using var stream = new MemoryStream(supposed.Text(), writable: false);
        var blocks = new LineBlocks(stream, blockSize, linesBefore: after - 1);
        return EventFile.ReadHeading(blocks, like.File, like.Vocabulary, problems) is { } columns
            ? EventFile.Read(blocks, like with { Columns = columns }, threads: 1) : [];
    }

    /// <summary>Fetches the texts of lines: of the file, and behind its last one of what is supposed.</summary>
    public static Dictionary<int, RowText> Find(this Supposed supposed, RecordFile file, IEnumerable<int> lines, int after, bool hasSupposed, int blockSize)
    {
        int[] wanted = [.. lines];
        var found = LineFinder.Find(file, wanted.Where(line => line <= after), blockSize);
        foreach (var (line, row) in !hasSupposed ? [] : LineFinder.Find(RecordFile.Of(file.Shown, supposed.Text()), wanted.Where(line => line > after).Select(line => line - after + 1), blockSize))
        {
            found.Add(line + after - 1, row);
        }

        return found;
    }
}
