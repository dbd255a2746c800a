namespace Byrelaw.Checking.Tests.Examples;

/// <summary>The base rules mean what their examples say, and the examples leave nothing of them out.</summary>
public sealed class BaseExamplesTests
{
    private static readonly RuleFiles Files = new();

    private static readonly (RulebookReading Reading, ExampleOutcome[] Outcomes)[] All =
        [.. new[] { "recipients", "treatment", "donors" }.Select(name => RulebookReader.Read($"rulesets/examples/{name}.byre", Files)!)
            .Select(reading => (reading, ExampleRunner.Run(reading, Files).ToArray()))];

    [Fact]
    public void Every_example_reads_and_comes_out_as_expected()
    {
        foreach (var (reading, outcomes) in All)
        {
            DiagnosticText.Of(reading.Problems).ShouldBe("");
            outcomes.Length.ShouldBeGreaterThan(80);
            Tried.Failures(outcomes).ShouldBe("");
        }
    }

    [Fact]
    public void Every_side_of_every_number_of_every_base_rule_is_shown()
    {
        var outcomes = All.SelectMany(one => one.Outcomes).ToList();
        var rules = All.SelectMany(one => RuleCoverage.Of(one.Reading.Rulebook, outcomes)).ToList();
        rules.Count.ShouldBe(74);
        rules.Where(rule => !rule.NotShown.IsEmpty).Select(rule => $"{rule.Name}: {string.Join("; ", rule.NotShown)}").ShouldBeEmpty();
    }

    [Fact]
    public void An_example_that_is_taken_away_leaves_a_side_unshown()
    {
        var (reading, outcomes) = All[0];
        foreach (var (example, side) in new[]
        {
            ("Eight weeks calved: one day short", "calving less than 56 days ago"),
            ("Eight weeks calved: a heifer", "an animal that it does not apply to"),
            ("Not among the herd's best: number 20 of 100", "the last of the top 20% by breeding index"),
        })
        {
            var without = outcomes.Where(outcome => outcome.Example.Name != example).ToList();
            without.Count.ShouldBe(outcomes.Length - 1, example);
            RuleCoverage.Of(reading.Rulebook, without).SelectMany(rule => rule.NotShown).ShouldBe([side], example);
        }
    }
}
