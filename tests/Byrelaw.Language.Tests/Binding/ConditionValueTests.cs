namespace Byrelaw.Language.Tests.Binding;

public sealed class ConditionValueTests
{
    [Fact]
    public void No_is_exactly_none()
    {
        var count = Rules.Condition("no mastitis or metritis in the last 30 days").ShouldBeOfType<CountCondition>();
        count.Test.ShouldBe(new CountTest(Comparison.Exactly, 0, 0));
        count.Counted.Select(counted => (counted.Kind.Name, counted.Answer)).ShouldBe([("mastitis", -1), ("metritis", -1)]);
        count.Windows.ShouldHaveSingleItem().ShouldBeOfType<InTheLast>().Length.ShouldBe(new TimeLength(30, TimeUnit.Days));
    }

    [Fact]
    public void An_answer_belongs_to_the_test_right_after_it()
    {
        var count = Rules.Condition("no mastitis or negative BVD virus ever").ShouldBeOfType<CountCondition>();
        count.Counted.Select(counted => (counted.Kind.Name, counted.Answer)).ShouldBe([("mastitis", -1), ("BVD virus", 1)]);
    }

    [Fact]
    public void A_range_of_times_keeps_its_units()
    {
        var since = Rules.Condition("between 6 and 8 weeks since last heat").ShouldBeOfType<TimeSinceCondition>();
        since.Test.ShouldBe(new TimeTest(Comparison.Between, new TimeLength(6, TimeUnit.Weeks), new TimeLength(8, TimeUnit.Weeks)));
    }

    [Fact]
    public void A_limit_is_kept_in_the_declared_unit()
    {
        var measured = Rules.Condition("latest liver copper in the last 90 days at least 6.03687 mg/kg").ShouldBeOfType<MeasuredCondition>();
        measured.Test.Low.Value.ShouldBe(95, 1e-9);
    }

    [Fact]
    public void A_share_names_its_fact()
    {
        var measured = Rules.Condition("latest weight in the last 60 days at least 60% of mature weight").ShouldBeOfType<MeasuredCondition>();
        measured.Test.Low.Value.ShouldBe(60);
        measured.Test.Low.PercentOf.ShouldNotBeNull().Name.ShouldBe("mature weight");
    }

    [Fact]
    public void A_date_of_the_programme_has_no_day_in_a_rule_file_on_its_own()
    {
        var count = Rules.Condition("no heat in the 60 days before collection").ShouldBeOfType<CountCondition>();
        count.Windows.ShouldHaveSingleItem().ShouldBeOfType<BeforeDate>().Date.ShouldBe(new DateReference("collection", null));
    }

    [Fact]
    public void A_date_of_the_programme_has_its_day_in_the_farm_file()
    {
        var count = Rules.Condition(
            "no heat in the 60 days before final transfer",
            "rules for donors\nrule \"A\"\n  needs no heat ever\n  because \"b\"\nprogramme \"P\"\n  collection on 2026-10-12\n  transfer 8 days after collection, over 2 days\n  choose donors from cows, judged on collection, for looking only\n");
        count.ShouldBeOfType<CountCondition>().Windows.ShouldHaveSingleItem().ShouldBeOfType<BeforeDate>().Date
            .ShouldBe(new DateReference("final transfer", new LocalDate(2026, 10, 21)));
    }
}
