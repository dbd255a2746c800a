namespace Byrelaw.Records.Csv;

/// <summary>A stretch of a file that starts and ends at line ends, in a buffer that is used again and again.</summary>
/// <remarks>One line feed stands before the stretch, so that no reader takes bytes at its start for the
/// byte-order mark of a file.</remarks>
internal sealed class LineBlock
{
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

    /// <summary>The line of the file that a line of <see cref="Bytes"/> (from 1, the added empty one) is.</summary>
    public int FileLine(long line) => LinesBefore + (int)line - 1;
}
