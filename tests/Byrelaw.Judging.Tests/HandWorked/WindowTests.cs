namespace Byrelaw.Judging.Tests.HandWorked;

/// <summary>Windows and durations, worked by hand.</summary>
public sealed class WindowTests
{
    private static readonly WrittenFarm Farm = new();

    [Theory]
    [InlineData("2026-08-31", "True")]
    [InlineData("2026-09-01", "False")]
    public void In_the_last_30_days_holds_both_ends(string on, string said) =>
        Farm.With("2026-08-01,7,mastitis").Says("at least 1 mastitis in the last 30 days", on).ShouldBe(said);

    [Theory]
    [InlineData("2026-08-30", "False")]
    [InlineData("2026-08-31", "True")]
    public void Thirty_days_ago_is_at_least_30_days_ago(string on, string said) =>
        Farm.With("2026-08-01,7,mastitis").Says("at least 1 mastitis at least 30 days ago", on).ShouldBe(said);

    [Theory]
    [InlineData("2026-08-31", "False")] // the window ends on collection, so it opens on 13 August
    [InlineData("2026-09-10", "False")]
    public void Days_before_a_date_stand_still(string on, string said) =>
        Farm.With("2026-08-12,7,mastitis").Says("at least 1 mastitis in the 60 days before collection", on).ShouldBe(said);

    [Fact]
    public void Days_before_a_date_hold_their_first_day() =>
        Farm.With("2026-08-13,7,mastitis").Says("at least 1 mastitis in the 60 days before collection", "2026-09-10").ShouldBe("True");

    [Fact]
    public void Other_kinds_on_the_day_of_calving_count_since_it() =>
        Farm.With("2026-08-01,7,calving", "2026-08-01,7,retained membranes").Says("at least 1 \"retained membranes\" since last calving", "2026-09-01").ShouldBe("True");

    [Fact]
    public void The_calving_itself_does_not_count_since_it() =>
        Farm.With("2026-08-01,7,calving").Says("at least 1 calving since last calving", "2026-09-01").ShouldBe("False");

    [Theory]
    [InlineData("2026-08-21,7,uterine check,clean", "Unknown")] // day 20
    [InlineData("2026-08-22,7,uterine check,clean", "True")]
    public void From_21_days_after_calving_opens_on_day_21(string check, string said) =>
        Farm.With("2026-08-01,7,calving", check).Says("latest uterine check from 21 days after last calving is clean", "2026-09-01").ShouldBe(said);

    [Theory]
    [InlineData("2026-08-31,7,uterine check,clean", "2026-09-10", "Unknown")] // 34 days after the bull left on 28 July
    [InlineData("2026-09-01,7,uterine check,clean", "2026-09-10", "True")]
    [InlineData("2026-09-01,7,uterine check,clean", "2026-07-20", "Unknown")] // he was with her
    public void From_35_days_after_the_last_of_a_spell_opens_35_days_after_its_end(string check, string on, string said) =>
        Farm.With("2026-06-20,7,bull in", "2026-07-28,7,bull out", check).Says("latest uterine check from 35 days after last running with bull is clean", on).ShouldBe(said);

    [Fact]
    public void A_spell_without_end_keeps_the_window_after_it_empty() =>
        Farm.With("2026-06-20,7,bull in", "2026-09-01,7,uterine check,clean").Says("latest uterine check from 35 days after last running with bull is clean", "2026-09-10").ShouldBe("Unknown");

    [Fact]
    public void Without_a_spell_the_window_runs_from_birth() =>
        Farm.With("2026-08-31,7,uterine check,clean").Says("latest uterine check from 35 days after last running with bull is clean", "2026-09-10").ShouldBe("True");

    [Theory]
    [InlineData("2024-02-28", "False")]
    [InlineData("2024-02-29", "True")]
    public void A_month_after_31_January_is_the_end_of_February(string on, string said) =>
        new WrittenFarm { UpTo = "2024-03-31", Events = ["2024-01-31,7,calving"] }.Says("at least 1 month since last calving", on).ShouldBe(said);

    [Theory]
    [InlineData("2026-09-07", "2026-10-20", "False")] // 43 of 56 days
    [InlineData("2026-08-25", "2026-10-20", "True expected")] // 56 of 56 days
    [InlineData("2026-08-26", "2026-10-20", "False")]
    public void Forty_three_of_56_days_is_not_yet(string calved, string on, string said) =>
        Farm.With($"{calved},7,calving").Says("at least 56 days since last calving", on).ShouldBe(said);

    [Fact]
    public void One_kind_on_one_day_counts_once() =>
        Farm.With("2026-08-01,7,mastitis", "2026-08-01,7,mastitis", "2026-08-02,herd,mastitis").Says("exactly 2 mastitis ever", "2026-09-01").ShouldBe("True");
}
