using System.Text.Unicode;
using CsvHelper;

namespace Byrelaw.Records.Csv;

/// <summary>The rows of one block, read strictly.</summary>
internal sealed class CsvRows : IDisposable
{
    private readonly LineBlock _block;
    private readonly CsvReader _reader;
    private readonly int _cellCount;
    private readonly bool _isClean;
    private readonly int _lineWithoutEnd;

    /// <summary>Opens a block.</summary>
    /// <param name="block">Must not change while it is read.</param>
    /// <param name="file">As shown.</param>
    /// <param name="cellCount">How many cells every row must have.</param>
    /// <param name="onBrokenRow">Told of each row that is badly quoted, has bad bytes, or too few or too many cells; such rows are passed over.</param>
    public CsvRows(LineBlock block, string file, int cellCount, Action<RowText> onBrokenRow)
    {
        _block = block;
        _cellCount = cellCount;
        File = file;
        OnBrokenRow = onBrokenRow;
        var bytes = block.Bytes;
        _isClean = Utf8.IsValid(bytes.Span) && !bytes.Span.Contains((byte)0);
        _reader = CsvReader.Create(bytes, new CsvReaderOptions
        {
            Separator = ',',
            HasHeader = false,
            AllowLineBreaksInQuotes = false,
            MalformedData = CsvMalformedDataHandling.Skip,
            TrackLineNumbers = true,
            OnMalformedRecord = row => onBrokenRow(Text(block.FileLine(row.LineNumber), Encoding.UTF8.GetBytes(row.RawRecord))),
        });
        _lineWithoutEnd = block.BreaksOff ? block.FileLine(LineCount.Of(bytes.Span[1..]) + 2) : -1;
    }

    private string File { get; }

    private Action<RowText> OnBrokenRow { get; }

    /// <summary>The line of the current row.</summary>
    public int Line => _block.FileLine(_reader.LineNumber);

    /// <summary>What a cell of the current row says, without blanks around it; empty for a column that is not there (-1).</summary>
    public ReadOnlySpan<byte> Cell(int cell)
    {
        if (cell < 0)
        {
            return [];
        }

        var span = _reader.GetSpan(cell);
        return span.IsEmpty || (span[0] > ' ' && span[^1] > ' ') ? span : span.Trim(" \t"u8);
    }

    /// <summary>Whether the current row has nothing but blank cells, as spreadsheets leave them at the end.</summary>
    public bool IsBlank => _reader.RawRecord.Trim(" \t,\""u8).IsEmpty;

    /// <summary>The current row as text.</summary>
    public RowText Text() => Text(Line, _reader.RawRecord);

    /// <summary>
    /// The last cell of the current row that is not blank, where the file ends in this row without a line end: nobody can tell
    /// whether all of that cell is there. -1 for every other row.
    /// </summary>
    public int CutCell
    {
        get
        {
            if (_lineWithoutEnd < 0 || Line != _lineWithoutEnd)
            {
                return -1;
            }

            var last = _reader.FieldCount - 1;
            while (last >= 0 && Cell(last).IsEmpty)
            {
                last--;
            }

            return last;
        }
    }

    /// <summary>Goes to the next row that is whole.</summary>
    public bool Read()
    {
        while (_reader.Read())
        {
            if (_isClean && _reader.FieldCount == _cellCount)
            {
                return true;
            }

            if (IsBlank)
            {
                continue;
            }

            var raw = _reader.RawRecord;
            if (_reader.FieldCount == _cellCount && Utf8.IsValid(raw) && !raw.Contains((byte)0))
            {
                return true;
            }

            OnBrokenRow(Text());
        }

        return false;
    }

    private RowText Text(int line, ReadOnlySpan<byte> bytes) => RowText.Of(File, line, bytes, isLastWithoutEnd: line == _lineWithoutEnd);

    /// <inheritdoc/>
    public void Dispose() => _reader.Dispose();
}
