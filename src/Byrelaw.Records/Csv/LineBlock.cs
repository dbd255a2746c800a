namespace Byrelaw.Records.Csv;

/// <summary>A stretch of a file that starts and ends at line ends, in a buffer that is used again and again.</summary>
/// <remarks>One line feed stands before the stretch, so that no reader takes bytes at its start for the
/// byte-order mark of a file. A row that goes over several lines stands there on one: blanks take the place of the line ends in its cells.</remarks>
internal sealed class LineBlock
{
    private readonly List<(int Line, int More)> _overLines = [];

    /// <summary>The bytes in use are the first <see cref="Length"/>.</summary>
    public byte[] Buffer { get; set; } = [];

    /// <summary>How many bytes are in use, the line feed before the stretch included.</summary>
    public int Length { get; set; }

    /// <summary>How many lines of the file stand before the stretch.</summary>
    public int LinesBefore { get; set; }

    /// <summary>Whether the file ends with this block, and its last line has no line end, as that of a file that breaks off.</summary>
    public bool BreaksOff { get; set; }

    /// <summary>The bytes in use.</summary>
    public ReadOnlyMemory<byte> Bytes => Buffer.AsMemory(0, Length);

    /// <summary>The line of the file that a line of <see cref="Bytes"/> (from 1, the added empty one) is, or starts at.</summary>
    public int FileLine(long line)
    {
        var (low, high) = (0, _overLines.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = _overLines[middle].Line < line ? (middle + 1, high) : (low, middle);
        }

        return LinesBefore + (int)line - 1 + (low == 0 ? 0 : _overLines[low - 1].More);
    }

    /// <summary>Puts rows that go over several lines on one line each.</summary>
    /// <param name="rows">Where each starts in the buffer, and how long it is; in order.</param>
    public void PutOnOneLine(IReadOnlyList<(int Start, int Length)> rows)
    {
        _overLines.Clear();
        var (line, more, from) = (1, 0, 0);
        foreach (var (start, length) in rows)
        {
            // Lines from here on count the row before as one.
            line += LineCount.Of(Buffer.AsSpan(from, start - from));
            var row = Buffer.AsSpan(start, length);
            more += LineCount.Of(row);
            _overLines.Add((line, more));
            row.ReplaceAny(LineEnds, (byte)' ');
            from = start;
        }
    }

    private static readonly System.Buffers.SearchValues<byte> LineEnds = System.Buffers.SearchValues.Create("\r\n"u8);
}
