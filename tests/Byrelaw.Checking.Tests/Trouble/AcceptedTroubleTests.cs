namespace Byrelaw.Checking.Tests.Trouble;

public sealed class AcceptedTroubleTests
{
    private const string Rules = """
        rules for recipients
        rule "A"
          needs no mastitis in the last 60 days
          because "b"
        rule "B"
          needs no mastitis in the last 30 days
          because "b"

        """;

    private const string Because = "\n  because \"We know.\"\n";

    [Fact]
    public void What_is_accepted_is_not_told() =>
        Written.Troubles(Rules + "accept \"B\" as implied by \"A\"" + Because).ShouldBeEmpty();

    [Theory]
    [InlineData("accept \"A\" as implied by \"B\"")]
    [InlineData("accept \"B\" as always met")]
    [InlineData("accept \"A\" as never met with \"B\"")]
    public void An_acceptance_of_something_else_accepts_nothing_and_is_told(string line) =>
        Written.Troubles(Rules + line + Because).Select(trouble => trouble[..5]).ShouldBe(["B1104", "B1110"]);

    [Fact]
    public void What_is_accepted_of_a_rule_that_cannot_be_read_may_be_there()
    {
        var rulebook = Written.Read(Rules + "accept \"A\" as always met" + Because);
        Written.Find(rulebook).Select(problem => problem.Code).ShouldBe(["B1104", "B1110"]);
        Written.Find(rulebook with { Rules = [.. rulebook.Rules.Select(rule => rule with { IsBroken = rule.Name == "A" })] }).ShouldBeEmpty();
    }

    [Theory]
    [InlineData("A", "B")]
    [InlineData("B", "A")]
    public void Two_rules_that_nobody_meets_together_are_accepted_from_either_side(string one, string other) =>
        Written.Troubles($"""
            rules for recipients
            rule "A"
              needs at least 56 days since last calving
              because "b"
            rule "B"
              needs at most 40 days since last calving
              because "b"
            accept "{one}" as never met with "{other}"
              because "They are for two seasons."

            """).ShouldBeEmpty();

    [Fact]
    public void A_list_of_heifers_cannot_meet_a_demand_on_calving()
    {
        const string Choice = "records \".\"\nprogramme \"p\"\n  transfer on 2026-10-19\n  choose recipients from heifers, judged on first transfer, for looking only\n";
        Written.Troubles("rules for recipients\nrule \"A\"\nneeds at most 60 days since last calving\nbecause \"b\"\n" + Choice).ShouldHaveSingleItem().ShouldStartWith("B1101");
        Written.Troubles("rules for recipients\nrule \"A\"\napplies to cows\nneeds at most 60 days since last calving\nbecause \"b\"\n" + Choice).ShouldBeEmpty();
    }
}
