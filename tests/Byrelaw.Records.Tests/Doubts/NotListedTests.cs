namespace Byrelaw.Records.Tests.Doubts;

/// <summary>A number of several rows that no animal has is told of once, with all its rows; and each of its rows stays in doubt for everybody.</summary>
public sealed class NotListedTests
{
    private const string Animals = """
        animal,sex
        1001,F
        1002,F
        """;

    [Fact]
    public void Three_rows_are_an_animal_and_two_may_be_slips()
    {
        var herd = Herd("2026-09-03,7719,heat\n2026-09-01,7719,heat\n2026-09-30,88,heat\n2026-09-31,7719,heat\n2026-09-29,88,heat");

        var number = herd.Doubted.OfType<NotListed>().ShouldHaveSingleItem().Numbers.ShouldHaveSingleItem();

        number.Number.ShouldBe("7719");
        number.Rows.Select(row => row.Line).ShouldBe([2, 3, 5]);
        herd.Coverage.Gaps.Count(gap => gap.Animal == -1).ShouldBe(5);
    }

    [Fact]
    public void An_animal_that_is_listed_is_none() => Herd("2026-09-01,1001,heat\n2026-09-02,1001,heat\n2026-09-03,1001,heat").Doubted.OfType<NotListed>().ShouldBeEmpty();

    [Fact]
    public void Nor_is_a_mob_without_a_name_or_a_row_of_nobody() => Herd("2026-09-01,mob:,heat\n2026-09-02,mob:,heat\n2026-09-03,mob:,heat\n2026-09-01,,heat\n2026-09-02,,heat\n2026-09-03,,heat")
        .Doubted.OfType<NotListed>().ShouldBeEmpty();

    private static Herd Herd(string rows) => HerdReader.Read(
        Read.Bytes(Animals), Read.Bytes("date,animal,kind\n" + rows + "\n"), Words.Vocabulary, Words.Keeping(upTo: "2026-10-01", complete: [(Words.Calving, "2010-01-01")]));
}
