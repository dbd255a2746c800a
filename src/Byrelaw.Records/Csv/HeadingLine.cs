namespace Byrelaw.Records.Csv;

/// <summary>Takes the first line of a file that is not blank.</summary>
internal static class HeadingLine
{
    /// <summary>The heading; null in a file without one. The next block starts with the line after it.</summary>
    public static RowText? Take(LineBlocks blocks, string file)
    {
        var block = new LineBlock();
        while (blocks.TryNext(block))
        {
            var rest = block.Bytes.Span[1..];
            for (var line = block.LinesBefore + 1; !rest.IsEmpty; line++)
            {
                var end = rest.IndexOfAny((byte)'\n', (byte)'\r');
                var text = end < 0 ? rest : rest[..end];
                rest = end < 0 ? [] : rest[(end + (rest[end..].StartsWith("\r\n"u8) ? 2 : 1))..];
                if (!text.Trim(" \t"u8).IsEmpty)
                {
                    var heading = RowText.Of(file, line, text);
                    blocks.PutBack(rest);
                    blocks.CellCount = heading.Cells.Count;
                    return heading;
                }
            }
        }

        return null;
    }
}
