namespace Byrelaw.Records.Embryos;

/// <summary>One row of a small file whose rows each have a label.</summary>
/// <param name="Row">As text.</param>
/// <param name="IsWhole">Whether all its cells are there and can be told apart.</param>
internal readonly record struct LabelledRow(RowText Row, bool IsWhole);

/// <summary>Reads the rows of <c>embryos.csv</c> and <c>pedigree.csv</c>: a few thousand at most, so that each may become text.</summary>
internal static class LabelledRows
{
    /// <summary>The heading and the rows below it, blank ones left out; no heading where nothing can be read under it.</summary>
    public static (ColumnMap? Map, List<LabelledRow> Rows) Read(RecordFile file, string first, Func<RowText, ColumnMap?> heading, List<Diagnostic> problems)
    {
        var rows = new List<LabelledRow>();
        if (file.IsUtf16())
        {
            problems.Add(HeadingProblems.Utf16(file.Shown));
            return (null, rows);
        }

        using var stream = file.Open();
        var blocks = new LineBlocks(stream, ReadingOptions.Default.BlockSize);
        if (HeadingLine.Take(blocks, file.Shown) is not { } head)
        {
            problems.Add(HeadingProblems.Empty(file.Shown, $"`{first}`"));
            return (null, rows);
        }

        if (heading(head) is not { } map)
        {
            return (null, rows);
        }

        var block = new LineBlock();
        while (blocks.TryNext(block))
        {
            using var cells = new CsvRows(block, file.Shown, map.CellCount, Broken);
            while (cells.Read())
            {
                if (!cells.IsBlank)
                {
                    var cut = cells.CutCell;
                    if (cut >= 0)
                    {
                        problems.Add(RowProblems.LastCellCut(cells.Text(), cut));
                    }

                    rows.Add(new LabelledRow(cells.Text(), cut < 0));
                }
            }
        }

        return (map, rows);

        void Broken(RowText row)
        {
            problems.Add(RowProblems.Of(row, map.CellCount));
            rows.Add(new LabelledRow(row, IsWhole: false));
        }
    }
}
