namespace Byrelaw.Records.Tests.Files;

/// <summary>Whole rows are split by a library, rows that are wrong and headings by the splitter that knows places: what both can split, they split alike.</summary>
public class SplittingTests
{
    private static readonly Gen<string> Line =
        Gen.OneOf(
            Gen.String[Gen.Char["ab,\"  \t;é"], 0, 14],
            Gen.OneOf("", "a", " a ", "\"a\"", "\"a,b\"", "\"say \"\"a\"\"\"", "\"\"", "\" \"", "a\"b", "\"a\"b", "\"a", "\"a\" ", " \"a\"").Array[1, 5].Select(cells => string.Join(',', cells)))
            .Where(line => line.AsSpan().Trim(" \t,\"").Length > 0);

    [Fact]
    public void Both_ways_of_splitting_a_line_split_alike() => Line.Hold(line =>
    {
        var cells = CellSplitter.Split(line);
        var broken = new List<RowText>();
        var bytes = Encoding.UTF8.GetBytes($"{line}\n");
        var block = new LineBlock();
        new LineBlocks(new MemoryStream(bytes), bytes.Length).TryNext(block).ShouldBeTrue();
        using var rows = new CsvRows(block, "events.csv", cells.Count, broken.Add);

        if (cells.Exists(cell => cell.Flaw != CellFlaw.None))
        {
            rows.Read().ShouldBeFalse("the splitter finds a flaw and the library none");
            broken.ShouldHaveSingleItem().Text.ShouldBe(line);
            return;
        }

        rows.Read().ShouldBeTrue("the library finds a flaw and the splitter none");
        Enumerable.Range(0, cells.Count).Select(cell => Encoding.UTF8.GetString(rows.Cell(cell))).ShouldBe(cells.Select(cell => cell.Value.Trim(' ', '\t')));
        broken.ShouldBeEmpty();
        (rows.Line, rows.Read()).ShouldBe((1, false));
    }, count: 5_000);

    private static readonly Gen<string> Lines = Gen.OneOf("a", "", "\"a\"", "\"a", "b\"", "\"", "\"\"", "a\"\"b", "\n", "\r\n", "\r", ",", ",", ",", " ", "7,", "é").Array[1, 16].Select(string.Concat);

    /// <summary>A row that goes over several lines has the cells that a library finds which reads line breaks in cells (RFC 4180, 2.6), and the row behind it its own line.</summary>
    [Fact]
    public void A_row_over_several_lines_is_split_as_a_library_splits_it()
    {
        var over = 0;
        Lines.Hold(text =>
        {
            var bytes = Encoding.UTF8.GetBytes($"x,y,z\n{text}\n1,2,3\n");
            if (RowOverLines.Of<char>(text + "\n1,2,3\n", ',', 3, isToTheEnd: true, out var length) != OverLines.Yes)
            {
                return;
            }

            over++;
            using var library = CsvHelper.CsvReader.Create(bytes, new CsvHelper.CsvReaderOptions { Separator = ',', HasHeader = false, AllowLineBreaksInQuotes = true });
            library.Read().ShouldBeTrue();
            library.Read().ShouldBeTrue();
            string[] expected = [.. Enumerable.Range(0, library.FieldCount).Select(cell => Encoding.UTF8.GetString(library.GetSpan(cell)).Replace('\n', ' ').Replace('\r', ' ').Trim())];

            var blocks = new LineBlocks(new MemoryStream(bytes), 16);
            HeadingLine.Take(blocks, "events.csv").ShouldNotBeNull();
            var block = new LineBlock();
            blocks.TryNext(block).ShouldBeTrue();
            using var rows = new CsvRows(block, "events.csv", 3, _ => { });
            if (expected.All(cell => cell.Length == 0))
            {
                return;
            }

            rows.Read().ShouldBeTrue();
            rows.Line.ShouldBe(2);
            Enumerable.Range(0, 3).Select(cell => Encoding.UTF8.GetString(rows.Cell(cell)).Trim()).ShouldBe(expected);
            if (blocks.TryNext(block))
            {
                var (line, left) = (block.FileLine(2), block.Length - 1);
                for (var more = new LineBlock(); blocks.TryNext(more);)
                {
                    left += more.Length - 1;
                }

                line.ShouldBe(1 + LineCount.Of(bytes.AsSpan(0, bytes.Length - left)));
            }
        }, count: 20_000);
        over.ShouldBeGreaterThan(10);
    }

    [Theory]
    [InlineData("a,\"one\ntwo\",b", true)]
    [InlineData("a,\"one, two\r\n\r\nthree\",b", true)]
    [InlineData("\"\n\",\"\n\",\"\n\"", true)]
    [InlineData("a,b,\"\nc,d,e\nf,g,\"", false)]       // two ditto marks: a row between them
    [InlineData("a,b,\"\nf,g,\"", false)]
    [InlineData("a,\",b\nf,\",b", false)]
    [InlineData("a,\"one\n7, two\",b", false)]         // may be a row that begins with a number
    [InlineData("a,\"one\ntwo\"", false)]              // too few cells
    [InlineData("a,\"one\ntwo\" ,b", false)]
    [InlineData("a,\"one\ntwo,b", false)]
    public void A_row_goes_over_lines_only_where_it_holds_no_other(string text, bool isOne) =>
        (RowOverLines.Of<char>(text + "\n", ',', 3, isToTheEnd: true, out _) == OverLines.Yes).ShouldBe(isOne);
}
