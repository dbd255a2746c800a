namespace Byrelaw.Records.Tests.Doubts;

public class SummaryTests
{
    [Fact]
    public void It_counts_what_is_there()
    {
        var check = RecordsCheck.Read(
            Read.Bytes("animal,born,sex,mob\n1001,2019-08-12,F,North\n1002,2020,F,North\n1003,2021,,\n2001,2022,M,\n,2021,F,\n"),
            Read.Bytes(Read.Heading(
                "2026-01-01,mob:North,mastitis,,", "2025-01-01,1001,mastitis,,", "2026-02-01,1002,sale,,", "2026-02-01,1001,weight,500,kg",
                "2026-03-01,mob:North,weight,510,kg", "2026-03-01,9999,heat,,", "soon,1001,heat,,", "2018-01-01,1001,heat,,", "2026-03-01,mob:Q,heat,,")),
            Words.Vocabulary, null);
        var summary = check.Summary;

        summary.Animals.ShouldBe(4);
        summary.Females.ShouldBe(2);
        summary.Males.ShouldBe(1);
        summary.Present.ShouldBe(3, "1002 is sold");
        summary.Mobs.ShouldBe(["North"]);
        summary.UnreadableRows.ShouldBe(5);
        summary.Kinds.ShouldBe([
            new KindSummary(Words.Mastitis, 3, 0, Words.Date("2025-01-01"), Words.Date("2026-01-01")),
            new KindSummary(Words.Sale, 1, 0, Words.Date("2026-02-01"), Words.Date("2026-02-01")),
            new KindSummary(Words.Weight, 1, 1, Words.Date("2026-02-01"), Words.Date("2026-03-01"))]);
    }
}
