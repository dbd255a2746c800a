namespace Byrelaw.Records.Csv;

/// <summary>Fetches the texts of some lines of a file, for what is found out only after the whole file is read.</summary>
internal static class LineFinder
{
    /// <summary>The wanted lines by number.</summary>
    public static Dictionary<int, RowText> Find(RecordFile file, IEnumerable<int> lines, int blockSize)
    {
        var found = new Dictionary<int, RowText>();
        int[] wanted = [.. lines.Distinct().Order()];
        if (wanted.Length == 0)
        {
            return found;
        }

        using var stream = file.Open();
        var blocks = new LineBlocks(stream, blockSize);
        var block = new LineBlock();
        var next = 0;
        if (HeadingLine.Take(blocks, file.Shown) is { } heading && heading.Line == wanted[0])
        {
            found.Add(heading.Line, heading);
            next++;
        }

        while (next < wanted.Length && blocks.TryNext(block))
        {
            next = FindIn(block, file.Shown, wanted, next, found);
        }

        return found;
    }

    private static int FindIn(LineBlock block, string file, int[] wanted, int next, Dictionary<int, RowText> found)
    {
        var rest = block.Bytes.Span[1..];
        for (var at = 2; !rest.IsEmpty && next < wanted.Length; at++)
        {
            var line = block.FileLine(at);
            var end = rest.IndexOfAny((byte)'\n', (byte)'\r');
            if (line == wanted[next])
            {
                found.Add(line, RowText.Of(file, line, end < 0 ? rest : rest[..end]));
                next++;
            }

            rest = end < 0 ? [] : rest[(end + (rest[end..].StartsWith("\r\n"u8) ? 2 : 1))..];
        }

        return next;
    }
}
