namespace Byrelaw.Records.Tests.Animals;

/// <summary>Animals that may be one under two numbers.</summary>
public class DoublesTests
{
    private const string Events = "date,animal,kind,value,unit\n2026-03-01,2,heat,,\n2026-03-02,2,foot trim,,\nsoon,2,calving,,\n";

    [Theory]
    [InlineData("7", "007")]
    [InlineData("7", "７")]
    [InlineData("7", "7\u200b")]
    [InlineData("A4", "a4")]
    [InlineData("12", "1 2")]
    [InlineData("0", "000")]
    public void Numbers_that_a_hand_may_have_written_for_each_other_are_doubles(string one, string other) => Pairs($"animal\n{one}\n{other}\n").ShouldBe(1);

    [Theory]
    [InlineData("7", "70")]
    [InlineData("12", "1-2")]
    [InlineData("A4", "B4")]
    public void Other_numbers_are_not(string one, string other) => Pairs($"animal\n{one}\n{other}\n").ShouldBe(0);

    [Theory]
    [InlineData("NZ 4-17", "nz0417", 0)]
    [InlineData("NZ 4-17", "nz 417", 1)]
    [InlineData("554000700041007", "554-000-700041007", 1)]
    public void In_identities_dashes_make_no_difference_either(string one, string other, int pairs) =>
        Pairs($"animal,official_id\n1,{one}\n2,{other}\n").ShouldBe(pairs);

    [Fact]
    public void What_is_on_record_of_one_is_in_doubt_for_the_other_by_kind_and_day() =>
        Snapshot.Verify(Shown.Gaps(Read.Herd(Events, "animal,official_id\n1,X1\n2,X1\n3,X3\n")));

    [Fact]
    public void Of_three_each_is_in_doubt_for_each() => Pairs("animal,official_id\n1,X1\n2,X1\n3,x1\n").ShouldBe(3);

    [Fact]
    public void Where_many_have_one_identity_it_may_be_anybodys()
    {
        var herd = Read.Herd(Events, "animal,official_id\n" + string.Concat(Enumerable.Range(1, 40).Select(number => $"{number},none\n")));
        herd.Coverage.Gaps.ShouldContain(gap => gap.Animal == -1 && gap.Kind == Words.Heat.Id);
    }

    [Fact]
    public void A_person_may_say_that_they_are_two() =>
        Pairs("animal,official_id\n1,X1\n2,X1\n", new ComparedNumbers(["2", "1"], AreOne: false, "Looked.", Agreement, default)).ShouldBe(0);

    [Fact]
    public void A_person_may_say_that_they_are_one()
    {
        var keeping = Words.Keeping() with { Compared = [new ComparedNumbers(["1", "2", "9"], AreOne: true, "Looked.", Agreement, default)] };
        var herd = Read.Herd(Events + "2026-04-01,9,heat,,\n", "animal,born,sex,official_id\n1,,F,X1\n2,2020-01-02,,X2\n3,,,\n", keeping);
        herd.Numbers.ShouldBe(["1", "3"]);
        herd.Find("2").ShouldBe(0);
        Shown.Entries(herd, "1", Words.Heat).ShouldBe("2026-03-01 (2), 2026-04-01 (5)");
        Shown.Date(herd.BornEarliest[0]).ShouldBe("2020-01-02");
        herd.Sexes[0].ShouldBe(Sex.Female);
        herd.Facts[Words.Identity.Id].States[0].ShouldBe(FactState.Unreadable, "two identities that differ");
    }

    [Fact]
    public void Of_two_sexes_they_stay_two_and_are_doubles()
    {
        var keeping = Words.Keeping() with { Compared = [new ComparedNumbers(["1", "2"], AreOne: true, "Looked.", Agreement, default)] };
        var herd = Read.Herd(Events, "animal,sex\n1,F\n2,M\n", keeping);
        herd.Numbers.ShouldBe(["1", "2"]);
        herd.Problems.ShouldContain(problem => problem.Code == "R0137");
        herd.Doubted.OfType<TwoNumbers>().Single().Pairs.Single().Why.ShouldBe(Likeness.Said);
    }

    private static Agreement Agreement => new(["farmer"], new NodaTime.LocalDate(2026, 9, 1));

    private static int Pairs(string animals, params ComparedNumbers[] compared) =>
        Read.Herd(Events, animals, Words.Keeping() with { Compared = [.. compared] }).Doubted.OfType<TwoNumbers>().Sum(doubt => doubt.Pairs.Length);
}
