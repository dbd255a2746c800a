using System.IO.Compression;
using Byrelaw.Language.Rulebooks.RecordSources;
using Byrelaw.Records.Sources;
using Byrelaw.Records.Workbooks;
using Byrelaw.Testing.Workbooks;
using static Byrelaw.Testing.Workbooks.MadeWorkbook;

namespace Byrelaw.Records.Tests.Sources;

/// <summary>Sheets of workbooks are read as text files are; what a workbook can do that a text cannot is read for what it is.</summary>
public sealed class WorkbookTests
{
    private const string Lines = """
          from "herd.xlsx", sheet "Cows", headings in row 2, a row for each animal, as at 2026-09-25
            dates day first
            decimal comma
            animal in "No"
            born in "Born"
            official identity in "Tag"
            mature weight in "Grown", in kg
            last mating in "Served"
            leave out columns "Sum"
        """;

    [Fact]
    public void Dates_numbers_and_texts_are_read_whatever_order_the_source_writes()
    {
        var herd = Herd(Lines, Cows(
            "<c r=\"A3\"><v>301</v></c><c r=\"B3\" s=\"1\"><v>43870</v></c><c r=\"C3\"><v>554000900000301</v></c><c r=\"D3\"><v>540.5</v></c><c r=\"E3\" s=\"1\"><v>46266</v></c>",
            Text('A', 4, "302") + Text('B', 4, "09/02/2020") + Text('D', 4, "510,25") + Text('E', 4, "01.09.2026")));

        herd.Problems.ShouldBeEmpty(DiagnosticText.Of(herd.Problems));
        herd.Numbers.ShouldBe(["301", "302"]);
        herd.BornEarliest.Select(Shown.Date).ShouldBe(["2020-02-09", "2020-02-09"], "serial 43870 is 9 February 2020");
        herd.Facts.Single(fact => fact.Texts.Length > 0).Texts[0].ShouldNotBeNull().Replace(" ", "").ShouldBe("554000900000301");
        herd.Facts.Single(fact => fact.Numbers.Length > 0).Numbers.ShouldBe([540.5, 510.25]);
        var mating = herd.Runs[herd.Vocabulary.FindKind("mating")!.Id];
        mating.Days.Select(Shown.Date).ShouldBe(["2026-09-01", "2026-09-01"]);
        herd.EventPlace(mating.Lines[0]).ShouldBe(new RecordPlace("herd.xlsx, Cows", 3) { Cell = "E3" });
        herd.EventPlace(mating.Lines[1]).Cell.ShouldBe("E4");
    }

    [Fact]
    public void Errors_and_formulas_that_nobody_worked_out_cannot_be_read()
    {
        var herd = Herd(Lines, Cows(
            Text('A', 3, "301") + "<c r=\"B3\" t=\"e\"><v>#N/A</v></c><c r=\"D3\"><f>SUM(A1:A2)</f></c><c r=\"E3\"><f>TODAY()</f></c>",
            Text('A', 4, "302") + "<c r=\"B4\" s=\"1\"><f>A1</f><v>43870</v></c><c r=\"D4\" t=\"str\"><f>\"\"</f><v></v></c><c r=\"E4\" t=\"e\"><v>#REF!</v></c>"));

        herd.BornEarliest.Select(Shown.Date).ShouldBe(["start", "2020-02-09"]);
        herd.Facts.Single(fact => fact.Numbers.Length > 0).States.ShouldBe([FactState.Unreadable, FactState.Missing], "a formula that gives an empty text is blank");
        herd.Problems.Select(problem => $"{problem.File}:{problem.Line} {problem.Code}").ShouldBe(["herd.xlsx, Cows:3 R0125", "herd.xlsx, Cows:3 R0174", "herd.xlsx, Cows:3 R0121", "herd.xlsx, Cows:4 R0121"], ignoreOrder: true);
        herd.Coverage.AnyGap(0, herd.Vocabulary.FindKind("mating")!.Id, 0, 1).ShouldBeTrue();
    }

    [Fact]
    public void Hidden_rows_and_merged_headings_are_read()
    {
        var herd = Herd("""
              from "herd.xlsx", headings in rows 1 to 2, a row for each animal, as at 2026-09-25
                animal in "No"
                last mating in "Last Served"
                leave out columns "Last By"
            """, MadeWorkbook.Of(("Sheet1", Row(1, "No", "Last") + Row(2, "", "Served", "By") + "<row r=\"3\" hidden=\"1\">" + Text('A', 3, "7") + Text('B', 3, "2026-09-01") + "</row></sheetData><mergeCells count=\"1\"><mergeCell ref=\"B1:C1\"/></mergeCells><sheetData>")));

        herd.Numbers.ShouldBe(["7"]);
        herd.Runs[herd.Vocabulary.FindKind("mating")!.Id].Days.Length.ShouldBe(1);
    }

    [Theory]
    [InlineData("R0311", "an old workbook")]
    [InlineData("R0312", "a packed file of something else")]
    [InlineData("R0312", "one that breaks off")]
    [InlineData("R0312", "an entity in its text")]
    [InlineData("R0314", "no such sheet")]
    [InlineData("R0315", "a text")]
    public void What_is_no_workbook_is_told(string code, string what)
    {
        var herd = Herd(Lines, what switch
        {
            "an old workbook" => [0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1, 0, 0],
            "a packed file of something else" => Zip([("cows.csv", "No\n1\n")]),
            "one that breaks off" => Cows(Text('A', 3, "301"))[..400],
            "an entity in its text" => MadeWorkbook.Of(("Cows", "<!DOCTYPE x [<!ENTITY a \"b\">]>" + Row(2, "No"))),
            "no such sheet" => MadeWorkbook.Of(("Bulls", Row(2, "No")), ("Cowz", Row(2, "No"))),
            _ => Encoding.UTF8.GetBytes("No\n1\n"),
        });

        herd.Problems.ShouldHaveSingleItem().Code.ShouldBe(code, herd.Problems[0].Message);
        var mating = herd.Vocabulary.FindKind("mating")!.Id;
        herd.Coverage.Gaps.ShouldContain(gap => gap.Animal < 0 && gap.Kind == mating && gap.From <= Day.Start && gap.To >= Day.End, "what it might have said is in doubt of everybody");
    }

    [Fact]
    public void What_unpacks_beyond_all_bounds_is_not_opened()
    {
        var bounds = new WorkbookBounds(20, 4000, 12000, 1000);
        Exceeded(bounds, Cows(Text('A', 3, "301"))).ShouldBeNull();
        Exceeded(bounds with { MostParts = 5 }, Cows("")).ShouldBe("it has more than 5 parts");
        Exceeded(bounds with { MostBetweenTags = 1 << 20, MostOfAPart = 4 << 20, MostInAll = 8 << 20 }, Cows(string.Concat(Enumerable.Range(3, 120_000).Select(row => Row(row, "1"))))).ShouldBe("unpacked it is larger than 4 MB");
        Exceeded(bounds with { MostBetweenTags = 1 << 20, MostOfAPart = 8 << 20, MostInAll = 8 << 20 }, Cows(Text('A', 3, new string('x', 2 << 20)))).ShouldBe("a cell or a tag in it is longer than 1 MB");
        Exceeded(bounds with { MostOfAPart = 4 << 20, MostInAll = 2 << 20 }, Zip([.. Enumerable.Range(0, 3).Select(part => ($"xl/media/{part}.bin", new string('<', 1 << 20)))])).ShouldBe("unpacked it is larger than 2 MB");
    }

    [Fact]
    public void A_sheet_that_says_it_is_endless_is_not_walked_to_its_end()
    {
        Herd(Lines, Cows(Text('A', 3, "301") + "<c r=\"XFD3\"><v>1</v></c>")).Problems.ShouldHaveSingleItem().Code.ShouldBe("R0313");
        Herd(Lines, Cows(Text('A', 3, "301"), "<row r=\"99999999\">" + Text('A', 99999999, "302") + "</row>")).Problems.ShouldHaveSingleItem().Code.ShouldBe("R0313");
        var far = Herd(Lines, Cows(Text('A', 3, "301"), "<row r=\"500000\">" + Text('A', 500000, "302") + "</row>"));
        far.Numbers.ShouldBe(["301", "302"]);
        far.AnimalPlace(far.AnimalLines[1]).ShouldBe(new RecordPlace("herd.xlsx, Cows", 500000));
    }

    private static string? Exceeded(WorkbookBounds bounds, byte[] workbook)
    {
        using var archive = new ZipArchive(new MemoryStream(workbook));
        return bounds.Exceeded(archive);
    }

    private static byte[] Cows(params string[] rows) => MadeWorkbook.Of(
        ("Notes", Row(1, "not this one")),
        ("Cows", Row(1, "Our herd") + Row(2, "No", "Born", "Tag", "Grown", "Served", "Sum") + string.Concat(rows.Select((row, i) => row.StartsWith("<row", StringComparison.Ordinal) ? row : $"<row r=\"{i + 3}\">{row}</row>"))));

    private static Herd Herd(string sources, byte[] workbook)
    {
        var rules = RulebookReader.Read("farm.byre", new OneFile("event mating\nfact official identity  is identity\nfact mature weight  in kg\n\nrecords\n  up to 2026-10-04\n" + sources))!;
        DiagnosticText.Of(rules.Problems).ShouldBe("");
        var input = SourceReader.Read(_ => workbook, file => file, rules.Rulebook.Vocabulary, rules.Rulebook.Records!);
        return HerdReading.Read(input, rules.Rulebook.Vocabulary, rules.Rulebook.Records, null, ReadingOptions.Default).Herd;
    }
}
