using Byrelaw.Records.Sources;
using Byrelaw.Testing.Workbooks;
using static Byrelaw.Testing.Workbooks.MadeWorkbook;

namespace Byrelaw.Records.Tests.Sources;

/// <summary>What people and programs do to workbooks: nothing in them is passed over in silence, and nothing is taken for what it is not.</summary>
public sealed class OddWorkbookTests
{
    private const string Lines = """
          from "herd.xlsx", sheet "Cows", a row for each animal, as at 2026-09-25
            dates day first
            animal in "No"
            born in "Born"
            last mating in "Served", blank is never
        """;

    private const string Styles = "<styleSheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><numFmts><numFmt numFmtId=\"164\" formatCode=\"[$-809]mmm\\-yy;@\"/><numFmt numFmtId=\"165\" formatCode=\"yyyy\"/>"
        + "<numFmt numFmtId=\"166\" formatCode=\"dd&quot;.&quot;mm.yyyy\\ hh:mm\"/></numFmts><cellXfs count=\"6\"><xf numFmtId=\"0\"/><xf numFmtId=\"14\"/><xf numFmtId=\"17\"/><xf numFmtId=\"164\"/><xf numFmtId=\"165\"/><xf numFmtId=\"166\"/></cellXfs></styleSheet>";

    [Theory]
    [InlineData(2, "46235", "", "R0121", "built in: Aug-26")]
    [InlineData(3, "46235", "", "R0121", "the same as somebody wrote the format")]
    [InlineData(4, "46235", "", "R0121", "2026")]
    [InlineData(5, "46235.75", "2026-08-01", "", "a day with its hour")]
    [InlineData(1, "46235.9999884259", "2026-08-01", "", "a second before midnight")]
    [InlineData(0, "46235", "", "R0121", "a number that nothing calls a date")]
    [InlineData(1, "0", "", "R0121", "a blank that a formula fetched")]
    [InlineData(1, "-5", "", "R0121", "before all days")]
    [InlineData(1, "99999999", "", "R0121", "after all days")]
    public void A_month_that_a_cell_shows_is_no_day_and_a_number_no_date(int style, string serial, string mated, string code, string why)
    {
        var herd = Herd(With(Cows(Text('A', 2, "301") + $"<c r=\"C2\" s=\"{style}\"><v>{serial}</v></c>"), "xl/styles.xml", Part("xl/styles.xml"), Styles));

        herd.Problems.Select(problem => problem.Code).ShouldBe(code.Length == 0 ? [] : [code], why);
        Mated(herd, "301").ShouldBe(mated, why);
        IsCovered(herd, "301", "2026-08-20").ShouldBe(mated.Length > 0, why);
    }

    [Fact]
    public void A_workbook_that_counts_from_1904_does()
    {
        var herd = Herd(With(Cows(
            Text('A', 2, "301") + "<c r=\"C2\" s=\"1\"><v>44773</v></c>",
            Text('A', 3, "302") + "<c r=\"C3\" s=\"1\"><v>0</v></c>"), "xl/workbook.xml", "<sheets>", "<workbookPr date1904=\"1\"/><sheets>"));

        Mated(herd, "301").ShouldBe("2026-08-01");
        IsCovered(herd, "302", "2026-08-20").ShouldBeFalse("1 January 1904 is what a blank looks like there, and nobody's last service");
    }

    [Fact]
    public void What_joined_cells_say_of_the_rows_below_the_first_is_not_known()
    {
        var herd = Herd(Cows("<mergeCells count=\"2\"><mergeCell ref=\"C2:C4\"/><mergeCell ref=\"E2:F900000\"/></mergeCells>",
            Text('A', 2, "301") + Text('C', 2, "01/08/2026"), Text('A', 3, "302"), Text('A', 4, "303") + "<c r=\"C4\" s=\"1\"/>", Text('A', 5, "304")));

        Mated(herd, "301").ShouldBe("2026-08-01");
        IsCovered(herd, "302", "2026-08-20").ShouldBeFalse("it may have been written for her too: she is not one that never was");
        IsCovered(herd, "303", "2026-08-20").ShouldBeFalse();
        IsCovered(herd, "304", "2026-08-20").ShouldBeTrue();
        herd.Problems.Select(problem => $"{problem.Line} {problem.Code} {problem.Found}").ShouldBe(["3 R0121 `a part of joined cells` is not a date", "4 R0121 `a part of joined cells` is not a date"]);
    }

    [Fact]
    public void A_heading_over_two_rows_goes_for_the_lower_one()
    {
        var herd = Herd(Of(("Cows", Row(1, "No", "Born", "Served") + Row(2, "", "", "") + "<row r=\"3\">" + Text('A', 3, "301") + Text('C', 3, "01/08/2026")
            + "</row></sheetData><mergeCells count=\"2\"><mergeCell ref=\"A1:A2\"/><mergeCell ref=\"B1:B2\"/><mergeCell ref=\"C1:C2\"/></mergeCells><sheetData>")),
            Lines.Replace("\"Cows\",", "\"Cows\", headings in row 2,", StringComparison.Ordinal));

        Mated(herd, "301").ShouldBe("2026-08-01");
    }

    [Fact]
    public void Formulas_are_what_was_worked_out_and_nothing_else()
    {
        var herd = Herd(Cows(
            Text('A', 2, "301") + "<c r=\"C2\" s=\"1\"><f>B1</f><v></v></c>",
            Text('A', 3, "302") + "<c r=\"C3\" t=\"str\"><f>IF(1,\"\",2)</f><v></v></c>",
            Text('A', 4, "303") + "<c r=\"C4\" t=\"e\"><f>B9/0</f><v>#DIV/0!</v></c>",
            "<c r=\"A5\" t=\"str\"><f>A1&amp;4</f><v>304</v></c><c r=\"C5\" t=\"b\"><v>0</v></c>",
            Text('A', 6, "305") + "<c r=\"C6\" t=\"d\"><v>2026-08-01T00:00:00</v></c>"));

        IsCovered(herd, "301", "2026-08-20").ShouldBeFalse("nobody worked it out");
        IsCovered(herd, "302", "2026-08-20").ShouldBeTrue("a formula that gives an empty text is blank");
        IsCovered(herd, "303", "2026-08-20").ShouldBeFalse();
        IsCovered(herd, "304", "2026-08-20").ShouldBeFalse("FALSE is no day");
        (Mated(herd, "305") is "2026-08-01" or "" && (Mated(herd, "305").Length > 0 || !IsCovered(herd, "305", "2026-08-20"))).ShouldBeTrue();
    }

    [Fact]
    public void Sheets_that_are_hidden_empty_or_a_picture_are_told_apart()
    {
        var three = Of(("Chart", ""), ("Old", Row(1, "No", "Born", "Served") + Row(2, "1", "", "01/08/2026")), ("Cows", Row(1, "No", "Born", "Served") + Row(2, "301", "", "01/08/2026")));
        var hidden = With(three, "xl/workbook.xml", "name=\"Old\"", "name=\"Old\" state=\"veryHidden\"");
        var chart = With(With(hidden, "xl/_rels/workbook.xml.rels", "/worksheet\" Target=\"worksheets/sheet1.xml\"", "/chartsheet\" Target=\"chartsheets/sheet1.xml\""), "xl/workbook.xml", "name=\"Chart\"", "name=\"Chart\" state=\"hidden\"");

        Herd(hidden).Numbers.ShouldBe(["301"]);
        Herd(chart).Numbers.ShouldBe(["301"]);
        Herd(chart, Lines.Replace("sheet \"Cows\", ", "", StringComparison.Ordinal)).Problems.ShouldHaveSingleItem().Code.ShouldBe("R0314", "nobody says which");
        Herd(chart, Lines.Replace("\"Cows\"", "\"Old\"", StringComparison.Ordinal)).Numbers.ShouldBe(["1"], "whoever names a hidden sheet means it");
        Herd(Of(("Cows", ""))).Problems.ShouldHaveSingleItem().Code.ShouldBe("R0303");
        Herd(Of(("Cows", Row(1, "No", "Born", "Served")))).Numbers.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("<c r=\"B2\"><v>1</v></c><c r=\"A2\"><v>301</v></c>")]
    [InlineData("<c r=\"A2\"><v>301</v></c><c r=\"A2\"><v>302</v></c>")]
    [InlineData("<c r=\"A2\" t=\"s\"><v>77</v></c>")]
    [InlineData("<c r=\"A2\" s=\"99\"><v>x</v></c><c r=\"C2\" s=\"1\"><v>1e400</v></c>")]
    public void A_sheet_that_says_two_things_or_nothing_is_not_believed(string row)
    {
        var herd = Herd(Cows(row));

        herd.Problems.ShouldNotBeEmpty();
        herd.Problems.ShouldContain(problem => problem.Severity == Severity.Error);
        herd.Numbers.ShouldNotContain("302");
    }

    [Fact]
    public void Two_parts_of_one_name_are_no_workbook()
    {
        var parts = Parts(Cows(Text('A', 2, "301")));
        Herd(Zip([.. parts, (parts[^1].Name.ToUpperInvariant(), parts[^1].Text)])).Problems.ShouldHaveSingleItem().Code.ShouldBe("R0312");
    }

    private static string Part(string name) => Parts(Cows(""))
        .Single(part => part.Name == name).Text;

    private static byte[] Cows(params string[] rows)
    {
        var merges = rows[0].StartsWith("<merge", StringComparison.Ordinal) ? rows[0] : "";
        var sheet = Row(1, "No", "Born", "Served") + string.Concat(rows.Skip(merges.Length > 0 ? 1 : 0).Select((row, i) => $"<row r=\"{i + 2}\">{row}</row>"));
        return With(Of(("Cows", sheet)), "xl/worksheets/sheet1.xml", "</sheetData>", $"</sheetData>{merges}");
    }

    private static string Mated(Herd herd, string animal) => string.Join(", ", herd.Runs[Mating(herd)].DaysOf(herd.Find(animal)).ToArray().Select(Shown.Date));

    private static bool IsCovered(Herd herd, string animal, string day) =>
        herd.Coverage.Covers(herd.Find(animal), Mating(herd), Day.Number(Words.Date(day)), Day.Number(Words.Date(day)), strict: true);

    private static int Mating(Herd herd) => herd.Vocabulary.FindKind("mating")!.Id;

    private static Herd Herd(byte[] workbook, string lines = Lines) => FarmFiles.Herd("event mating\n\nrecords\n  up to 2026-10-04\n" + lines, ("herd.xlsx", workbook));
}
