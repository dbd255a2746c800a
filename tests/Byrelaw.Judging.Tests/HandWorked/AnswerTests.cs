namespace Byrelaw.Judging.Tests.HandWorked;

/// <summary>Rules and answers, worked by hand.</summary>
public sealed class AnswerTests
{
    private const string EightWeeks = "rule \"Eight weeks calved\"\n  needs at least 56 days since last calving\n  because \"so\"\n  source \"common practice\"\n";
    private const string Clean = "rule \"Clean\"\n  needs latest uterine check from 21 days after last calving is clean\n  because \"so\"\n  source \"common practice\"\n";
    private const string OnTransfer = "choose recipients from \"7\", judged on 2026-10-20";

    private static readonly WrittenFarm Farm = new() { Programme = "collection on 2026-10-12\n  transfer 8 days after collection, over 2 days" };

    [Fact]
    public void Calved_43_of_56_days_is_Later_and_too_late() =>
        Farm.With("2026-09-07,7,calving").Answer(EightWeeks, OnTransfer).ShouldBe("Later from 2026-11-02, too late");

    [Fact]
    public void Calved_long_ago_is_On_course_until_the_records_reach_the_day() =>
        Farm.With("2026-07-01,7,calving").Answer(EightWeeks, OnTransfer).ShouldBe("OnCourse");

    [Fact]
    public void Calved_long_ago_is_Ready_on_a_day_the_records_reach() =>
        Farm.With("2026-07-01,7,calving").Answer(EightWeeks, "choose recipients from \"7\", judged on 2026-09-20").ShouldBe("Ready");

    [Fact]
    public void A_range_asks_for_every_day_of_it() =>
        Farm.With("2026-08-26,7,calving").Answer(EightWeeks, "choose recipients from \"7\", judged from first transfer to final transfer").ShouldBe("Later from 2026-10-21");

    [Fact]
    public void A_rule_that_turns_within_the_judging_days_is_Later_from_its_day_if_it_holds_to_their_end() =>
        Farm.With("2026-07-01,7,calving").Answer(
            Timed("From the second day", "between 112 and 200 days"),
            "choose recipients from \"7\", judged from first transfer to final transfer").ShouldBe("Later from 2026-10-21");

    [Fact]
    public void A_rule_that_lapses_within_the_judging_days_is_No() =>
        Farm.With("2026-07-01,7,calving").Answer(
            Timed("First day", "at most 111 days"), "choose recipients from \"7\", judged from first transfer to final transfer").ShouldBe("No");

    [Fact]
    public void A_day_within_the_judging_days_is_enough_to_wait_for_though_the_rule_lapses_soon_after() =>
        Farm.With("2026-07-01,7,calving").Answer(
            Timed("One day", "between 112 and 112 days"), "choose recipients from \"7\", judged from first transfer to final transfer").ShouldBe("Later from 2026-10-21");

    [Fact]
    public void A_missing_check_is_Ask() =>
        Farm.With("2026-07-01,7,calving").Answer(EightWeeks + Clean, OnTransfer).ShouldBe("Ask");

    [Fact]
    public void A_missing_check_of_one_who_calved_too_lately_is_Later_and_asked_for_then() =>
        Farm.With("2026-09-07,7,calving").Answer(EightWeeks + Clean, OnTransfer).ShouldBe("Later not before 2026-11-02, too late");

    [Fact]
    public void One_of_whom_all_is_known_later_still_may_be_ready_before_if_what_is_not_known_turns_out_well() =>
        Farm.With("2026-09-01,7,calving").Answer(
            EightWeeks + "rule \"Clean or long calved\"\n  needs any of\n    - latest uterine check from 21 days after last calving is clean\n"
                + "    - at least 90 days since last calving\n  because \"so\"\n  source \"common practice\"\n",
            OnTransfer).ShouldBe("Later from 2026-11-30 not before 2026-10-27, too late");

    [Fact]
    public void A_limit_that_time_cannot_undo_is_No() =>
        Farm.Answer("rule \"Young\"\n  needs age at most 6 years\n  because \"so\"\n  source \"common practice\"\n", OnTransfer).ShouldBe("No");

    [Fact]
    public void Rules_that_never_hold_together_are_No() =>
        Farm.With("2026-08-01,7,calving", "2026-08-01,7,heat")
            .Answer(EightWeeks.Replace("56", "100", StringComparison.Ordinal) + "rule \"Lately in heat\"\n  needs at most 90 days since last heat\n  because \"so\"\n  source \"common practice\"\n",
                "choose recipients from \"7\", judged on 2026-11-01").ShouldBe("No");

    [Theory]
    [InlineData("between 100 and 110 days", "between 120 and 130 days", "judged on 2026-11-01", "First and Second")]
    [InlineData("between 100 and 110 days", "between 110 and 130 days", "judged on 2026-11-01", "")] // both on day 110
    [InlineData("between 100 and 110 days", "between 110 and 130 days", "judged from 2026-11-01 to 2026-11-02", "First and Second")] // not on two days in a row
    [InlineData("between 100 and 110 days", "between 109 and 130 days", "judged from 2026-11-01 to 2026-11-02", "")]
    public void Of_rules_that_each_hold_later_those_that_never_do_together_are_named(string first, string second, string judged, string said) =>
        Farm.With("2026-08-01,7,calving").NeverTogether(
            EightWeeks + Timed("First", first) + Timed("Second", second), $"choose recipients from \"7\", {judged}").ShouldBe(said);

    private static string Timed(string name, string needs) => $"rule \"{name}\"\n  needs {needs} since last calving\n  because \"so\"\n  source \"common practice\"\n";

    [Fact]
    public void Sold_is_No() =>
        Farm.With("2026-07-01,7,calving", "2026-08-01,7,sale").Answer(EightWeeks, OnTransfer).ShouldBe("No");

    [Fact]
    public void A_rule_for_heifers_lets_a_cow_through() =>
        Farm.With("2026-07-01,7,calving").Rule("  applies to heifers\n  needs age at most 2 years", "2026-09-01").ShouldBe("True");

    [Fact]
    public void Pass_replaces_a_not_known_but_not_where_a_result_is_awaited()
    {
        Farm.Rule("  needs latest BVD virus is negative\n  if not known pass", "2026-09-01").ShouldBe("True");
        Farm.With("2026-08-20,7,BVD virus,pending").Rule("  needs latest BVD virus is negative\n  if not known pass", "2026-09-01").ShouldBe("Unknown");
    }

    [Fact]
    public void Exclude_replaces_a_not_known() =>
        Farm.Rule("  needs latest BVD virus is negative\n  if not known exclude", "2026-09-01").ShouldBe("False");

    [Theory]
    [InlineData("2026-08-01,7,heat", "2026-08-02,7,transfer", "Ready")] // one of each list holds
    [InlineData("2026-08-01,7,heat", "2026-08-02,7,mating", "No")] // neither of the first does
    [InlineData("2026-08-01,7,transfer", "2026-08-02,7,mastitis", "No")] // neither of the second does
    public void What_a_change_of_a_safety_rule_asks_is_asked_with_what_it_asked_before(string one, string other, string said) =>
        Farm.With(one, other).Answer(
            "safety rule \"S\"\n  needs any of\n    - no mating ever\n    - no heat ever\n  because \"so\"\n"
                + "change \"S\"\n  needs any of\n    - no transfer ever\n    - no mastitis ever\n  because \"so\"\n  agreed by \"vet\" on 2026-06-14\n",
            "choose recipients from \"7\", judged on 2026-09-20").ShouldBe(said);

    [Theory]
    [InlineData("2026-09-09", "False")]
    [InlineData("2026-09-10", "True")]
    [InlineData("2026-09-30", "True")]
    [InlineData("2026-10-01", "False")]
    public void A_waiver_holds_from_the_agreed_day_to_until(string on, string said) =>
        Farm.With("2026-09-07,7,calving").Rule(
            "  needs at least 56 days since last calving", on,
            "waive \"R\" for \"7\"\n  until 2026-09-30\n  because \"seen to\"\n  agreed by \"herd vet\" on 2026-09-10\n").ShouldBe(said);
}
