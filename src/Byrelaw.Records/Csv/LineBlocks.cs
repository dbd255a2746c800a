using System.Security.Cryptography;

namespace Byrelaw.Records.Csv;

/// <summary>
/// Hands out a file in blocks of whole lines, in order, to any number of threads; knows the line
/// each block starts at, and feeds every byte to a digest on the way.
/// </summary>
internal sealed class LineBlocks
{
    private const byte Lf = (byte)'\n';
    private const byte Cr = (byte)'\r';
    private const byte Quote = (byte)'"';
    private const byte Comma = (byte)',';

    // A row of a herd's file is a few hundred bytes long; one of so many is none, and would take all memory.
    private const int LongestLine = 256 << 20;
    private readonly Lock _gate = new();
    private readonly Stream _stream;
    private readonly IncrementalHash? _digest;
    private readonly int _blockSize;
    private readonly List<(int Start, int Length)> _overLines = [];
    private byte[] _rest = [];
    private int _restLength;
    private int _lines;
    private bool _started;
    private bool _ended;

    /// <summary>Starts at the beginning of a stream.</summary>
    public LineBlocks(Stream stream, int blockSize, IncrementalHash? digest = null, int linesBefore = 0)
    {
        _lines = linesBefore;
        _stream = stream;
        // A small file needs no large block: made-up herds are read by the hundred.
        _blockSize = stream.CanSeek ? (int)Math.Min(blockSize, stream.Length + 1) : blockSize;
        _digest = digest;
    }

    /// <summary>How many cells a row has, as the heading says; 0 until that is known. From then on no block ends within a row that goes over several lines.</summary>
    public int CellCount { get; set; }

    /// <summary>How many lines have been handed out, those before the stream counted.</summary>
    public int Lines => _lines;

    /// <summary>Fills the block with the next lines; false at the end of the file.</summary>
    public bool TryNext(LineBlock block)
    {
        lock (_gate)
        {
            var length = Take(block);
            var end = EndOfLastLine(block, ref length);
            _overLines.Clear();
            end = CellCount == 0 ? end : EndOfLastRow(block, end, ref length);
            _restLength = length - end;
            if (_rest.Length < _restLength)
            {
                _rest = new byte[_restLength];
            }

            Array.Copy(block.Buffer, end, _rest, 0, _restLength);
            block.Buffer[0] = Lf;
            block.Length = end;
            block.LinesBefore = _lines;
            block.BreaksOff = end > 1 && block.Buffer[end - 1] is not (Lf or (byte)'\r');
            _lines += LineCount.Of(block.Buffer.AsSpan(1, end - 1));
            block.PutOnOneLine(_overLines);
            return end > 1;
        }
    }

    /// <summary>Puts lines back that were not wanted: the next block starts with them.</summary>
    public void PutBack(ReadOnlySpan<byte> bytes)
    {
        lock (_gate)
        {
            var rest = new byte[bytes.Length + _restLength];
            bytes.CopyTo(rest);
            _rest.AsSpan(0, _restLength).CopyTo(rest.AsSpan(bytes.Length));
            (_rest, _restLength) = (rest, rest.Length);
            _lines -= LineCount.Of(bytes);
        }
    }

    /// <summary>Moves what is left over and then new bytes into the block.</summary>
    private int Take(LineBlock block)
    {
        Room(block, 1 + _restLength + _blockSize);
        _rest.AsSpan(0, _restLength).CopyTo(block.Buffer.AsSpan(1));
        var length = 1 + _restLength;
        length += Fill(block.Buffer.AsSpan(length, _blockSize));
        if (!_started)
        {
            _started = true;
            if (block.Buffer.AsSpan(1, length - 1).StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]))
            {
                block.Buffer.AsSpan(4, length - 4).CopyTo(block.Buffer.AsSpan(1));
                length -= 3;
            }
        }

        return length;
    }

    /// <summary>Where the last whole line ends; reads on where one line fills the whole block.</summary>
    private int EndOfLastLine(LineBlock block, ref int length)
    {
        while (!_ended)
        {
            var last = block.Buffer.AsSpan(1, length - 1).LastIndexOf(Lf);
            if (last >= 0)
            {
                return last + 2;
            }

            if (length > LongestLine)
            {
                throw new IOException("a file of the records has a row longer than 256 MB, so it is no table; export it again");
            }

            Room(block, length + _blockSize);
            length += Fill(block.Buffer.AsSpan(length, _blockSize));
        }

        return length;
    }

    /// <summary>Where the last whole row ends, for a row may go over several lines; notes those that do.</summary>
    private int EndOfLastRow(LineBlock block, int end, ref int length)
    {
        for (var at = 1; ;)
        {
            var quote = block.Buffer.AsSpan(at, end - at).IndexOf(Quote);
            if (quote < 0)
            {
                return end;
            }

            // Only an odd number of marks on a line leaves a cell open.
            var start = at + block.Buffer.AsSpan(at, quote).LastIndexOfAny(Lf, Cr) + 1;
            var line = block.Buffer.AsSpan(start, end - start).IndexOfAny(Lf, Cr) is >= 0 and var after ? after : end - start;
            if (block.Buffer.AsSpan(start, line).Count(Quote) % 2 == 0)
            {
                at = start + line;
                continue;
            }

            switch (RowOverLines.Of(block.Buffer.AsSpan(start, end - start), Comma, CellCount, isToTheEnd: _ended && end == length, out var row))
            {
                case OverLines.Yes:
                    _overLines.Add((start, row));
                    at = start + row;
                    break;
                case OverLines.No:
                    at = start + line;
                    break;
                default:
                    if (start > 1)
                    {
                        return start;
                    }

                    // One row fills the block.
                    Room(block, length + _blockSize);
                    length += Fill(block.Buffer.AsSpan(length, _blockSize));
                    end = EndOfLastLine(block, ref length);
                    break;
            }
        }
    }

    private int Fill(Span<byte> space)
    {
        var read = _stream.ReadAtLeast(space, space.Length, throwOnEndOfStream: false);
        _ended |= read < space.Length;
        _digest?.AppendData(space[..read]);
        return read;
    }

    private static void Room(LineBlock block, int size)
    {
        if (block.Buffer.Length < size)
        {
            var buffer = new byte[size + (size / 4)];
            block.Buffer.CopyTo(buffer, 0);
            block.Buffer = buffer;
        }
    }
}
