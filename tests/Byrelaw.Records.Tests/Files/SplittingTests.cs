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
}
