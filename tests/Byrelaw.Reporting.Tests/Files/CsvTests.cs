namespace Byrelaw.Reporting.Tests.Files;

public sealed class CsvTests
{
    [Fact]
    public void Records_read_back_cell_for_cell() => Gen.OneOf(Gen.String, Gen.OneOf("=1+1", "a,b", "\"", "\r\n", "", "-1", "@x", "\tx")).Array[1, 8].List[1, 5].Hold(rows =>
    {
        var read = Read(string.Concat(rows.Select(row => Csv.Record(row))));
        read.Count.ShouldBe(rows.Count);
        for (var i = 0; i < rows.Count; i++)
        {
            read[i].Select(Undefuse).ShouldBe(rows[i].Select(Undefuse));
        }
    });

    [Theory]
    [InlineData("=HYPERLINK(\"x\")")]
    [InlineData("+1")]
    [InlineData("-1+1")]
    [InlineData("@SUM(A1)")]
    [InlineData("\t=1")]
    [InlineData("\r=1")]
    [InlineData("＝1")]
    public void Cells_that_a_spreadsheet_would_run_are_defused(string cell) => Read(Csv.Record(cell))[0][0].ShouldBe("'" + cell);

    [Fact]
    public void No_cell_of_a_draft_can_run()
    {
        foreach (var trick in new[] { "=cmd", "+x", "-x", "@x", "\tx" })
        {
            var csv = Report.Of(InventedDraft.Make(text => trick + text)).Single(file => file.Path.EndsWith("draft.csv", StringComparison.Ordinal)).Text;
            var rows = Read(csv);
            rows.Count.ShouldBe(9);
            rows.ShouldAllBe(row => row.Count == rows[0].Count);
            rows.SelectMany(row => row).ShouldAllBe(cell => cell.Length == 0 || !"=+-@\t\r\n".Contains(cell[0]));
        }
    }

    private static string Undefuse(string cell) => cell.Length > 1 && cell[0] == '\'' && "=+-@\t\r\n＝＋－＠".Contains(cell[1]) ? cell[1..] : cell;

    /// <summary>A literal reader of RFC 4180, section 2.</summary>
    private static List<List<string>> Read(string text)
    {
        var (rows, row, cell, quoted) = (new List<List<string>>(), new List<string>(), new System.Text.StringBuilder(), false);
        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            if (quoted)
            {
                if (c != '"')
                {
                    cell.Append(c);
                }
                else if (i + 1 < text.Length && text[i + 1] == '"')
                {
                    cell.Append(text[i++]);
                }
                else
                {
                    quoted = false;
                }
            }
            else if (c == '"')
            {
                quoted = true;
            }
            else if (c is ',' or '\r')
            {
                row.Add(cell.ToString());
                cell.Clear();
                if (c == '\r')
                {
                    text[++i].ShouldBe('\n');
                    rows.Add(row);
                    row = [];
                }
            }
            else
            {
                cell.Append(c);
            }
        }

        return rows;
    }
}
