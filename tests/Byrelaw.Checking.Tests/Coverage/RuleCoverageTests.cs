namespace Byrelaw.Checking.Tests.Coverage;

public sealed class RuleCoverageTests
{
    private const string Rules = """
        event calving not before 15 months of age
        event heat
        event mating
        event bull in
        event bull out
        spell running with bull from bull in until bull out, or in a mob with a male from 6 months of age
        measure liver copper in umol/kg
        measure body condition on scale 1 to 10
        measure weight in kg
        test BVD virus answers positive, negative
        fact breeding index is number
        fact mature weight in kg
        fact breed is one of Friesian, Jersey
        define hard calvers
          at least 2 heats or matings since last calving
        call heat also heats
        call mating also matings
        rules for recipients

        """;

    [Theory]
    [InlineData("time", "at least 56 days since last calving")]
    [InlineData("times", "between 28 and 365 days since last calving")]
    [InlineData("age", "age at least 13 months")]
    [InlineData("count", "no heat or mating in the last 30 days")]
    [InlineData("counts", "between 2 and 4 heats since last calving")]
    [InlineData("before", "no heat in the 60 days before collection")]
    [InlineData("ago", "at least 1 mating between 28 and 60 days ago")]
    [InlineData("from", "latest BVD virus from 21 days after last calving is negative")]
    [InlineData("since", "no heat since 2026-06-01")]
    [InlineData("scale", "latest body condition in the last 45 days between 1 and 5.5")]
    [InlineData("share", "latest weight in the last 60 days at least 60% of mature weight")]
    [InlineData("mob", "average liver copper of her mob in the last 90 days, from at least 5 animals, at least 95 umol/kg")]
    [InlineData("of-mob", "at most 1 of her mob with liver copper in the last 60 days less than 7 umol/kg, from at least 10 animals")]
    [InlineData("standing", "breeding index not in the top 20% of the herd")]
    [InlineData("fact", "breed is one of Friesian, Jersey")]
    [InlineData("recorded", "breed is recorded")]
    [InlineData("spell", "not running with bull in the last 35 days")]
    [InlineData("parity", "parity at most 6")]
    [InlineData("define", "hard calvers")]
    public void A_rule_without_examples_lacks_every_side(string name, string condition) => Snapshot.Verify(
        condition + "\n" + string.Join('\n', NotShown($"rule \"It\"\n  needs {condition}\n  because \".\"\n  source \".\"\n")) + "\n", name);

    [Fact]
    public void What_an_example_shows_is_not_lacking_any_more()
    {
        const string Rule = "rule \"It\"\n  applies to cows\n  needs at least 56 days since last calving\n  because \".\"\n  source \".\"\n";
        NotShown(Rule).ShouldBe(["calving less than 56 days ago", "calving exactly 56 days ago", "calving more than 56 days ago", "calving: not known", "an animal that it does not apply to"]);
        NotShown(Rule, "cow born 2020-01-01\n calving 2026-09-07", "met").ShouldBe(
            ["calving exactly 56 days ago", "calving more than 56 days ago", "calving: not known", "an animal that it does not apply to"]);
        NotShown(Rule, "heifer born 2024-01-01", "met").ShouldBe(
            ["calving less than 56 days ago", "calving exactly 56 days ago", "calving more than 56 days ago", "calving: not known"]);
    }

    /// <summary>Whether the expectation holds makes no difference: it is what the example is about.</summary>
    private static IEnumerable<string> NotShown(string rule, string? animal = null, string answer = "met")
    {
        var example = animal is null ? "" : $"example \"One\"\n {animal}\n judged on 2026-10-19\n expect \"It\" {answer}\n";
        var reading = RulebookReader.Read("rules.byre", new RuleFiles(("rules.byre", Rules + rule + example)))!;
        reading.Problems.Where(problem => problem.Severity == Language.Diagnostics.Severity.Error).Select(problem => problem.Message).ShouldBeEmpty();
        return RuleCoverage.Of(reading.Rulebook, Checking.Examples.ExampleRunner.Run(reading.Rulebook)).ShouldHaveSingleItem().NotShown;
    }
}
