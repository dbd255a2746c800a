namespace Byrelaw.Records.Embryos;

/// <summary>One row of a small file whose rows each have a label.</summary>
/// <param name="Label">What it is called.</param>
/// <param name="Row">As text.</param>
/// <param name="Cells">Reads its cells.</param>
/// <param name="IsWhole">Whether all its cells are there and can be told apart.</param>
internal readonly record struct LabelledRow(string Label, RowText Row, EmbryoCells Cells, bool IsWhole);

/// <summary>The rows of <c>embryos.csv</c> or <c>pedigree.csv</c>, each label once: a few thousand at most, so that each may become text.</summary>
internal sealed class LabelledRows
{
    private readonly HashSet<string> _doubled = new(StringComparer.Ordinal);

    private LabelledRows()
    {
    }

    /// <summary>In the file's order; of several with one label the first.</summary>
    public List<LabelledRow> Rows { get; } = [];

    /// <summary>Whether a label stands on several rows.</summary>
    public bool IsDoubled(string label) => _doubled.Contains(label);

    /// <summary>Reads the rows below the heading, blank ones left out; none where nothing can be read under it.</summary>
    /// <param name="file">The file.</param>
    /// <param name="column">The column of the labels.</param>
    /// <param name="heading">Reads the heading.</param>
    /// <param name="problems">Takes what is wrong.</param>
    public static LabelledRows Read(RecordFile file, string column, Func<RowText, ColumnMap?> heading, List<Diagnostic> problems)
    {
        var read = new LabelledRows();
        if (file.IsUtf16())
        {
            problems.Add(HeadingProblems.Utf16(file.Shown));
            return read;
        }

        using var stream = file.Open();
        var blocks = new LineBlocks(stream, ReadingOptions.Default.BlockSize);
        if (HeadingLine.Take(blocks, file.Shown) is not { } head)
        {
            problems.Add(HeadingProblems.Empty(file.Shown, $"`{column}`"));
        }
        else if (heading(head) is { } map)
        {
            read.Add(blocks, file.Shown, column, map, problems);
        }

        return read;
    }

    private void Add(LineBlocks blocks, string file, string column, ColumnMap map, List<Diagnostic> problems)
    {
        var lines = new Dictionary<string, int>(StringComparer.Ordinal);
        var block = new LineBlock();
        while (blocks.TryNext(block))
        {
            using var cells = new CsvRows(block, file, map.CellCount, Broken);
            while (cells.Read())
            {
                if (!cells.IsBlank)
                {
                    var cut = cells.CutCell;
                    if (cut >= 0)
                    {
                        problems.Add(RowProblems.LastCellCut(cells.Text(), cut));
                    }

                    Add(cells.Text(), isWhole: cut < 0);
                }
            }
        }

        void Broken(RowText row)
        {
            problems.Add(RowProblems.Of(row, map.CellCount));
            Add(row, isWhole: false);
        }

        void Add(RowText row, bool isWhole)
        {
            var cells = new EmbryoCells(row, map, problems);
            if (cells.Text(column) is not { } label)
            {
                problems.AddRange(isWhole ? [EmbryoProblems.NoLabel(row, cells.At(column), column)] : []);
            }
            else if (!lines.TryAdd(label, row.Line))
            {
                problems.Add(EmbryoProblems.Twice(row, cells.At(column), column, lines[label]));
                _doubled.Add(label);
            }
            else
            {
                Rows.Add(new LabelledRow(label, row, cells, isWhole));
            }
        }
    }
}
