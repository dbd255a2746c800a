namespace Byrelaw.Records.Tests.Coverage;

public class CoverageTests
{
    private static Herd Herd(params string[] rows) => Read.Herd(
        Read.Heading(rows), keeping: Words.Keeping("2026-09-20", null, (Words.Heat, "2024-06-01"), (Words.Calving, "2020-01-01"), (Words.Heat, "2025-01-01")));

    [Fact]
    public void A_kind_is_covered_from_the_declared_date_the_earliest_of_several()
    {
        var herd = Herd();

        herd.Coverage.Since[Words.Heat.Id].ShouldBe(Day.Number(Words.Date("2024-06-01")));
        herd.Coverage.Since[Words.Mating.Id].ShouldBe(Day.End);
    }

    [Fact]
    public void Nothing_need_be_covered_before_the_first_possible_day_of_birth()
    {
        var herd = Herd();
        var needed = herd.Coverage.NeededFrom;

        needed[Words.Heat.Id].ShouldBeSameAs(needed[Words.Mating.Id]);
        Shown.Date(needed[Words.Heat.Id][herd.Find("1003")]).ShouldBe("2021-08-01");
        Shown.Date(needed[Words.Heat.Id][herd.Find("1004")]).ShouldBe("start");
    }

    [Fact]
    public void Nothing_need_be_covered_before_the_age_at_which_it_can_happen()
    {
        var herd = Herd();
        var needed = herd.Coverage.NeededFrom[Words.Calving.Id];

        Shown.Date(needed[herd.Find("1001")]).ShouldBe("2020-11-12", "15 months after 2019-08-12");
        Shown.Date(needed[herd.Find("1004")]).ShouldBe("start", "her birth is not known");
    }

    [Fact]
    public void Coverage_lasts_from_joining_to_leaving()
    {
        var herd = Herd("2024-08-01,1001,purchase,,", "2026-03-01,1001,sale,,");
        var animal = herd.Find("1001");

        Shown.Date(herd.Coverage.Joined[animal]).ShouldBe("2024-08-01");
        Shown.Date(herd.Coverage.Left[animal]).ShouldBe("2026-03-01");
        Shown.Date(herd.Coverage.Joined[herd.Find("1002")]).ShouldBe("start");
        Shown.Date(herd.Coverage.Left[herd.Find("1002")]).ShouldBe("end");
    }

    [Fact]
    public void After_she_comes_back_coverage_starts_again()
    {
        var herd = Herd("2024-08-01,1001,sale,,", "2025-03-01,1001,purchase,,");

        Shown.Date(herd.Coverage.Joined[herd.Find("1001")]).ShouldBe("2025-03-01");
        Shown.Date(herd.Coverage.Left[herd.Find("1001")]).ShouldBe("end");
    }

    [Fact]
    public void A_joining_that_cannot_be_read_covers_nothing_before_it()
    {
        var herd = Herd("2024-08-01,1001,purchase,dear,");

        Shown.Date(herd.Coverage.Joined[herd.Find("1001")]).ShouldBe("2024-08-01");
        Shown.Date(herd.Coverage.Left[herd.Find("1001")]).ShouldBe("end");
    }

    [Fact]
    public void A_joining_that_may_have_been_hers_does_not_bring_back_one_who_left()
    {
        var herd = Herd("2024-08-01,1001,sale,,", "2025-08-01,9999,purchase,,");

        Shown.Date(herd.Coverage.Joined[herd.Find("1001")]).ShouldBe("2025-08-01");
        Shown.Date(herd.Coverage.Left[herd.Find("1001")]).ShouldBe("2024-08-01");
    }

    [Fact]
    public void A_leaving_that_cannot_be_read_ends_coverage()
    {
        var herd = Herd("2024-08-01,1001,sale,dear,");

        Shown.Date(herd.Coverage.Joined[herd.Find("1001")]).ShouldBe("start");
        Shown.Date(herd.Coverage.Left[herd.Find("1001")]).ShouldBe("2024-08-01");
    }

    [Fact]
    public void A_joining_on_an_unreadable_day_covers_nothing_at_all()
    {
        var herd = Herd("soon,1001,purchase,,");

        Shown.Date(herd.Coverage.Joined[herd.Find("1001")]).ShouldBe("end");
    }

    [Fact]
    public void A_leaving_of_an_unknown_animal_ends_everyones_coverage_but_theirs_who_join_later()
    {
        var herd = Herd("2024-08-01,9999,sale,,", "2025-01-01,1002,purchase,,");

        Shown.Date(herd.Coverage.Left[herd.Find("1001")]).ShouldBe("2024-08-01");
        Shown.Date(herd.Coverage.Left[herd.Find("1002")]).ShouldBe("end");
    }

    [Fact]
    public void Gaps_are_sorted_by_kind_animal_and_day_and_marked_by_kind()
    {
        var herd = Herd("2025-03-01,1002,heat,x,", "2025-02-01,1002,heat,x,", "2025-03-01,1001,heat,x,", "2025-03-01,1001,calving,x,", "2025-05-01,9999,heat,,");

        herd.Coverage.Gaps.ShouldBe(herd.Coverage.Gaps.OrderBy(gap => (gap.Kind, gap.Animal, gap.From)));
        herd.Coverage.HasGaps[Words.Heat.Id].ShouldBeTrue();
        herd.Coverage.HasGaps[Words.Mating.Id].ShouldBeFalse();
        herd.Coverage.AnyGap(herd.Find("1002"), Words.Heat.Id, Day.Number(Words.Date("2025-02-01")), Day.Number(Words.Date("2025-02-01"))).ShouldBeTrue();
        herd.Coverage.AnyGap(herd.Find("1002"), Words.Heat.Id, Day.Number(Words.Date("2025-02-02")), Day.Number(Words.Date("2025-02-28"))).ShouldBeFalse();
        herd.Coverage.AnyGap(herd.Find("2001"), Words.Heat.Id, Day.Number(Words.Date("2025-04-30")), Day.Number(Words.Date("2025-05-02"))).ShouldBeTrue();
    }

    [Fact]
    public void A_gap_of_an_unreadable_kind_touches_every_kind() =>
        Herd("2025-03-01,1002,foot trim,,").Coverage.HasGaps.ShouldAllBe(has => has);

    [Fact]
    public void A_row_that_cannot_be_read_and_whose_date_cannot_be_right_may_be_of_any_day() =>
        Shown.Gaps(Herd("2018-03-01,1002,heat,x,", "2026-09-21,1002,heat,x,"))
            .ShouldBe("not known: 1002, heat, any day (line 2)\nnot known: 1002, heat, any day (line 3)\n");
}
