namespace Byrelaw.Language.Tests.Layers;

/// <summary>Two used layers that touch one rule, neither lying over the other.</summary>
public sealed class ConflictTests
{
    private const string Base = "event heat\nrules for recipients\nrule \"A\"\n  needs no heat ever\n  because \"b\"\n";
    private const string Agreed = "  because \"c\"\n  agreed by \"vet\" on 2026-06-14\n";
    private const string To30 = "change \"A\"\n  needs no heat in the last 30 days\n" + Agreed;
    private const string To60 = "change \"A\"\n  needs no heat in the last 60 days\n" + Agreed;
    private const string Asks = "change \"A\"\n  if not known exclude\n" + Agreed;
    private const string Drops = "drop \"A\"\n" + Agreed;

    [Theory]
    [InlineData(To30, To60)]
    [InlineData(To30, Asks)]
    [InlineData(To30, Drops)]
    public void They_conflict_and_nobody_passes(string first, string second)
    {
        var reading = Read(first, second, "");
        reading.Problems.Select(problem => problem.Code).ShouldBe(["B0706"]);
        reading.Rulebook.Rules.Single().IsBroken.ShouldBeTrue();
        reading.Rulebook.Drops.ShouldBeEmpty();
    }

    [Fact]
    public void A_change_of_its_own_in_the_using_file_settles_it()
    {
        var rule = Rules.Good(Read(To30, To60, "change \"A\"\n  needs no heat in the last 90 days\n" + Agreed)).Rules.Single();
        rule.IsBroken.ShouldBeFalse();
        CanonicalText.Of(rule.Needs).ShouldBe("no heat in the last 90 days");
    }

    [Fact]
    public void It_does_not_settle_a_line_that_both_state_and_it_does_not()
    {
        var reading = Read(To30, To60, Asks);
        reading.Problems.Select(problem => problem.Code).ShouldContain("B0706");
        reading.Rulebook.Rules.Single().IsBroken.ShouldBeTrue();
    }

    [Fact]
    public void A_change_of_its_own_keeps_a_rule_that_one_layer_drops_and_another_changes()
    {
        var rulebook = Rules.Good(Read(To30, Drops, "change \"A\"\n  needs no heat in the last 90 days\n" + Agreed));
        rulebook.Rules.Single().IsBroken.ShouldBeFalse();
        rulebook.Drops.ShouldBeEmpty();
    }

    [Fact]
    public void A_drop_of_its_own_settles_it_too() =>
        Rules.Good(Read(To30, To60, Drops)).Rules.ShouldBeEmpty();

    [Fact]
    public void A_layer_over_the_other_does_not_conflict_with_it()
    {
        var files = new RuleFilesInMemory().Add("farm.byre", "use \"b.byre\"\n").Add("base.byre", Base)
            .Add("a.byre", "use \"base.byre\"\n" + To30).Add("b.byre", "use \"a.byre\"\n" + To60);
        CanonicalText.Of(Rules.Good(Rules.Read(files)).Rules.Single().Needs).ShouldBe("no heat in the last 60 days");
    }

    [Fact]
    public void A_rule_that_only_one_layer_drops_cannot_be_changed_over_it()
    {
        var reading = Read(Drops, "", To60);
        reading.Problems.Select(problem => problem.Code).ShouldBe(["B0711"]);
        reading.Rulebook.Rules.Single().IsBroken.ShouldBeTrue();
    }

    private static RulebookReading Read(string a, string b, string farm) => Rules.Read(new RuleFilesInMemory()
        .Add("farm.byre", "use \"a.byre\"\nuse \"b.byre\"\n" + farm).Add("base.byre", Base)
        .Add("a.byre", "use \"base.byre\"\n" + a).Add("b.byre", "use \"base.byre\"\n" + b));
}
