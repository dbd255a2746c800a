namespace Byrelaw.Records.Tests.Doubts;

public class DoubtTests
{
    private const string Animals = """
        animal,born,sex,parity,official_id,mob
        1001,2019-08-12,F,1,982000412345678,North
        1002,2020-07-30,F,3,982000412345679,North
        1003,2021-08,F,,,North
        2001,2022-09-01,M,,,Bulls
        """;

    private const string Events = """
        date,animal,kind,value,unit,recorded
        2024-01-10,1001,calving,,,
        2024-05-01,1001,calving,,,
        2021-06-01,1002,calving,,,
        2025-01-01,1003,sale,,,
        2025-01-01,1003,heat,,,
        2025-02-01,1003,heat,,,
        2025-03-01,1003,death,,,
        2025-03-01,1001,weight,500,kg,
        2025-03-01,1001,weight,560,kg,
        2025-03-01,1001,BVD virus,positive,,
        2025-03-01,1001,BVD virus,negative,,
        2025-03-01,1002,BVD virus,pending,,
        2025-03-01,1002,BVD virus,negative,,
        2025-04-01,1001,heat,,,2025-03-30
        2025-05-01,mob:North,bull out,,,
        2025-06-01,1001,bull in,,,
        2025-06-30,1001,bull out,,,
        2025-07-01,herd,serum copper,8,umol/L,
        2025-07-01,mob:North,BVD virus,negative,,
        2025-07-01,1001,purchase,,,
        """;

    [Fact]
    public void What_is_hard_to_believe_is_said_and_suspends_nothing()
    {
        var check = RecordsCheck.Read(Read.Bytes(Read.Whole(Animals)), Read.Bytes(Read.Whole(Events)), Words.Vocabulary, Words.Keeping(upTo: "2025-07-01", complete: [(Words.Calving, "2010-01-01"), (Words.BullIn, "2020-01-01")]));

        check.Herd.Problems.ShouldBeEmpty();
        check.Doubts.ShouldAllBe(doubt => doubt.Severity == Severity.Warning);
        check.Herd.Coverage.Gaps.ShouldAllBe(gap => gap.Line == 16 || gap.Line == 3, "only whose the mob's row is nobody says, and whether she calved twice");
        Snapshot.Verify(string.Join('\n', check.Doubts.Select(Shown.Problem)));
    }

    [Theory]
    [InlineData("", "2025-08-01,1001,calving", "2026-02-17,1001,calving")]
    [InlineData("2026-02-17", "2025-08-02,1001,calving", "2026-02-17,1001,calving")]
    [InlineData("2026-02-17, 2026-03-01", "2025-08-02,1001,calving", "2026-02-17,1001,calving", "2026-03-01,1001,calving")]
    [InlineData("", "2025-08-02,1001,calving", "2025-08-02,1001,calving")]
    [InlineData("", "2025-08-02,1002,calving", "2026-02-17,1001,calving")]
    [InlineData("2026-02-17", "2025-08-02,1001,calvd", "2026-02-17,1001,calving")]
    [InlineData("2026-02-17", "2025-08-02,1O01,calving", "2026-02-17,1001,calving")]
    [InlineData("2026-02-17", "2025-08-,1001,calving", "2026-02-17,1001,calving")]
    [InlineData("", "2025-08-02,1001,calvd", "2025-05-10,1001,mating", "2026-02-17,1001,calving")]
    [InlineData("2025-08-02, 2026-02-17", "2025-08-02,1001,calving", "2025-05-10,1001,mating", "2026-02-17,1001,calving")]
    [InlineData("2026-02-17", "2025-10-09,1001,mating", "2026-02-17,1001,calving")]
    [InlineData("2026-02-17", "2025-08-02,1001,mating", "2026-02-17,1001,calving")]
    [InlineData("", "2025-08-01,1001,mating", "2026-02-17,1001,calving")]
    [InlineData("", "2025-10-09,1001,mating", "2025-05-10,1001,mating", "2026-02-17,1001,calving")]
    [InlineData("2026-02-17", "2025-10-,1001,mating", "2026-02-17,1001,calving")]
    public void Which_calvings_come_too_soon_after_another(string doubted, params string[] rows)
    {
        ArgumentNullException.ThrowIfNull(rows);
        var herd = RecordsCheck.Read(
            Read.Bytes("animal,born,sex\n1001,2019-08-01,F\n1002,2019-08-01,F\n"), Read.Bytes("date,animal,kind\n" + string.Concat(rows.Select(row => row + "\n"))),
            Words.Vocabulary, Words.Keeping(upTo: "2026-06-01", complete: [(Words.Calving, "2010-01-01")])).Herd;

        string.Join(", ", herd.Doubted.OfType<RowsInDoubt>().Where(one => one.Why == RowDoubt.CalvedAgainSoon).SelectMany(one => one.Rows).Select(row => $"{Day.Date(row.Day):uuuu'-'MM'-'dd}")).ShouldBe(doubted);
    }

    [Fact]
    public void Believable_records_raise_no_doubt()
    {
        const string Believable = """
            date,animal,kind,value,unit
            2022-08-01,1001,calving,,
            2023-08-01,1001,calving,,
            2023-06-01,mob:North,bull in,,
            2023-07-01,mob:North,bull out,,
            2023-07-01,2001,weight,800,kg
            2024-01-01,1003,purchase,,
            2024-03-01,1003,sale,,
            2024-06-01,1003,purchase,,
            2024-07-01,1003,heat,,
            2024-07-01,1001,weight,560,kg
            2024-07-01,1001,weight,560000,g
            2024-07-01,1001,serum copper,<5,umol/L
            2024-07-01,1001,serum copper,4,umol/L
            """;
        var animals = "animal,born,sex,mob,parity\n1001,2019-08-12,F,North,2\n1003,2021-08,F,South,1\n2001,2021-09-01,M,,\n";

        RecordsCheck.Read(Read.Bytes(animals), Read.Bytes(Read.Whole(Believable)), Words.Vocabulary, null).Doubts.ShouldBeEmpty();
    }

    [Fact]
    public void Records_that_cannot_be_read_at_all_raise_no_doubt() =>
        RecordsCheck.Read([], [], Words.Vocabulary, null).Doubts.ShouldBeEmpty();
}
