namespace Byrelaw.Judging.Tests.HandWorked;

/// <summary>"What is known", sentence by sentence.</summary>
public sealed class CoverageTests
{
    private static readonly WrittenFarm Farm = new();

    [Fact]
    public void Nothing_on_record_is_nothing_happened_where_the_kind_is_kept() =>
        Farm.Says("no mastitis in the last 30 days", "2026-09-01").ShouldBe("True");

    [Fact]
    public void Nothing_on_record_is_not_known_where_the_kind_is_not_kept() =>
        new WrittenFarm { Keeps = "complete for heat since 2020-01-01" }.Says("no mastitis in the last 30 days", "2026-09-01").ShouldBe("Unknown");

    [Theory]
    [InlineData("2026-08-02", "True")]
    [InlineData("2026-08-03", "Unknown")]
    public void The_whole_window_must_be_covered(string since, string said) =>
        new WrittenFarm { Keeps = $"complete for mastitis since {since}" }.Says("no mastitis in the last 30 days", "2026-09-01").ShouldBe(said);

    [Fact]
    public void Every_named_kind_must_be_covered() =>
        new WrittenFarm { Keeps = "complete for mastitis since 2015-01-01" }.Says("no mastitis or metritis in the last 30 days", "2026-09-01").ShouldBe("Unknown");

    [Fact]
    public void A_count_reached_is_reached_whatever_is_missing() =>
        new WrittenFarm { Keeps = "complete for heat since 2020-01-01", Events = ["2026-08-20,7,mastitis"] }
            .Says("at least 1 mastitis in the last 30 days", "2026-09-01").ShouldBe("True");

    [Fact]
    public void A_count_passed_is_passed_whatever_is_missing() =>
        new WrittenFarm { Keeps = "complete for heat since 2020-01-01", Events = ["2026-08-20,7,mastitis"] }
            .Says("no mastitis in the last 30 days", "2026-09-01").ShouldBe("False");

    [Fact]
    public void Days_after_the_known_day_are_judged_as_if_nothing_more_happens() =>
        Farm.Says("no mastitis in the last 30 days", "2026-10-12").ShouldBe("True expected");

    [Theory]
    [InlineData("2026-08-02", "True")] // the first day of the window
    [InlineData("2026-08-03", "Unknown")]
    public void Coverage_starts_when_she_joins(string bought, string said) =>
        Farm.With($"{bought},7,purchase").Says("no mastitis in the last 30 days", "2026-09-01").ShouldBe(said);

    [Theory]
    [InlineData("2026-09-01", "True")]
    [InlineData("2026-08-31", "Unknown")]
    public void Coverage_ends_when_she_leaves(string sold, string said) =>
        Farm.With($"{sold},7,sale").Says("no mastitis in the last 30 days", "2026-09-01").ShouldBe(said);

    [Fact]
    public void An_animal_born_here_has_nothing_before_her_birth_to_cover() =>
        new WrittenFarm { Keeps = "complete for mastitis since 2020-05-01" }.Says("no mastitis ever", "2026-09-01").ShouldBe("True");

    [Fact]
    public void Calving_need_not_be_covered_before_15_months_of_age() =>
        new WrittenFarm { Keeps = "complete for calving since 2021-08-01" }.Says("no calving ever", "2026-09-01").ShouldBe("True");

    [Fact]
    public void Calving_must_be_covered_from_15_months_of_age() =>
        new WrittenFarm { Keeps = "complete for calving since 2021-08-02" }.Says("no calving ever", "2026-09-01").ShouldBe("Unknown");

    [Fact]
    public void The_last_calving_on_record_is_the_last_where_calving_is_covered_since() =>
        new WrittenFarm { Keeps = "complete for calving since 2026-07-02", Events = ["2026-07-01,7,calving"] }
            .Says("at least 56 days since last calving", "2026-09-01").ShouldBe("True");

    [Theory]
    [InlineData("2026-07-07", "Unknown")] // 6 July may have been another calving, 57 days before
    [InlineData("2026-07-08", "Unknown")] // 7 July, 56 days before
    public void A_gap_after_the_last_calving_leaves_the_answer_open_only_where_it_would_change(string since, string said)
    {
        var farm = new WrittenFarm { Keeps = $"complete for calving since {since}", Events = ["2026-06-01,7,calving"] };
        farm.Says("at least 56 days since last calving", "2026-09-01").ShouldBe("True");
        farm.Says("at least 58 days since last calving", "2026-09-01").ShouldBe(said);
    }

    [Fact]
    public void Never_happened_makes_at_least_true_and_at_most_false()
    {
        Farm.Says("at least 21 days since last heat", "2026-09-01").ShouldBe("True");
        Farm.Says("between 6 and 8 days since last heat", "2026-09-01").ShouldBe("False");
    }

    [Fact]
    public void Since_something_that_never_happened_counts_from_birth() =>
        Farm.With("2021-08-20,7,mastitis").Says("no mastitis since last calving", "2026-09-01").ShouldBe("False");

    [Fact]
    public void Not_recorded_and_not_covered_is_not_known() =>
        new WrittenFarm { Keeps = "complete for mastitis since 2015-01-01" }.Says("no mastitis since last calving", "2026-09-01").ShouldBe("Unknown");
}
