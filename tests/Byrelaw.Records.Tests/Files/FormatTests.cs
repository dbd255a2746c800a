namespace Byrelaw.Records.Tests.Files;

public class FormatTests
{
    private const string Rows = "date,animal,kind,note\n2026-03-01,1001,heat,\n\n2026-03-02,1001,heat,x\n";

    [Theory]
    [InlineData(Rows, "2026-03-01 (2), 2026-03-02 (4)")]
    [InlineData("\uFEFF" + Rows, "2026-03-01 (2), 2026-03-02 (4)")]
    [InlineData("\n\n" + Rows, "2026-03-01 (4), 2026-03-02 (6)")]
    [InlineData("date,animal,kind,note\r\n2026-03-01,1001,heat,\r\n\r\n2026-03-02,1001,heat,x\r\n", "2026-03-01 (2), 2026-03-02 (4)")]
    [InlineData("date,animal,kind,note\r2026-03-01,1001,heat,\r\r2026-03-02,1001,heat,x\r", "2026-03-01 (2), 2026-03-02 (4)")]
    [InlineData("date,animal,kind,note\n2026-03-01,1001,heat,\n2026-03-02,1001,heat,", "2026-03-01 (2), 2026-03-02 (3)")]
    [InlineData("kind,note,animal,date\nheat,,1001,2026-03-01\n", "2026-03-01 (2)")]
    [InlineData("Date, ANIMAL ,Kind,Note\n 2026-03-01 ,1001 , heat,\t\n", "2026-03-01 (2)")]
    [InlineData("date,animal,kind\n\"2026-03-01\",\"1001\",\"heat\"\n", "2026-03-01 (2)")]
    [InlineData("date,animal,kind,note\n2026-03-01,1001,heat,\"red, \"\"big\"\" calf\"\n", "2026-03-01 (2)")]
    [InlineData("date,animal,kind,note\n2026-03-01,1001,heat,\n,,,\n,,,\n", "2026-03-01 (2)")]
    [InlineData("date,animal,kind,note\n2026-03-01,1001,heat,\n , \n\t\n", "2026-03-01 (2)")]
    public void All_these_are_the_same_records(string events, string heats)
    {
        var herd = Read.Herd(events);

        herd.Problems.ShouldBeEmpty();
        Shown.Entries(herd, "1001", Words.Heat).ShouldBe(heats);
    }

    [Fact]
    public void Quoted_cells_hold_commas_and_doubled_quotation_marks()
    {
        var herd = Read.Herd(Rows, "animal,sex,cow line,mob\n1001,F,\"Ann, \"\"the red\"\"\",\"North, far\"\n");

        herd.Facts[Words.Line.Id].Texts.ShouldBe(["Ann, \"the red\""]);
        herd.Mobs.Names.ShouldBe(["North, far"]);
    }

    [Fact]
    public void A_problem_in_a_quoted_cell_is_marked_with_its_quotation_marks()
    {
        var problem = Read.Herd("date,animal,kind,note\n\"1 March\",1001,heat,\"é, \"\"x\"\"\"\n2026-03-02,\"99\"\"99\",heat,\n").Problems;

        problem[0].Column.ShouldBe(1);
        problem[0].Length.ShouldBe(9);
        problem[1].Column.ShouldBe(12);
        problem[1].Length.ShouldBe(8);
        problem[1].Found.ShouldContain("`99\"99`");
    }

    [Fact]
    public void Columns_count_utf16_units_whatever_the_bytes_are() =>
        Read.Herd("note,date,animal,kind\n\"Müller 🐄\",2026-03-01,9999,heat\n").Problems.Single().Column.ShouldBe("\"Müller 🐄\",2026-03-01,".Length + 1);
}
