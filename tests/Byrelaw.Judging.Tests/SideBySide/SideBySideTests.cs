namespace Byrelaw.Judging.Tests.SideBySide;

/// <summary>Two evaluators, one truth: the fast one, and the slow literal one that is the specification.</summary>
public sealed class SideBySideTests
{
    [Fact]
    public void The_judge_says_what_the_reference_says_of_random_rules_and_records() => Each.Hold(
        JudgingCase.Any,
        Cases.Count,
        Difference.Of,
        one =>
        {
            var smaller = Smaller.Of(one);
            return $"{Difference.Of(smaller)}\n{smaller}";
        });

    [Fact]
    public void They_say_the_same_of_bulls_and_the_mobs_they_run_with() => Each.Hold(
        JudgingCase.Bulls,
        Cases.Count / 2,
        Difference.Of,
        one =>
        {
            var smaller = Smaller.Of(one);
            return $"{Difference.Of(smaller)}\n{smaller}";
        });

    [Fact]
    public void They_say_the_same_where_an_anchor_may_have_been_on_many_days() => Each.Hold(
        JudgingCase.Doubtful,
        Cases.Count / 2,
        Difference.Of,
        one =>
        {
            var smaller = Smaller.Of(one);
            return $"{Difference.Of(smaller)}\n{smaller}";
        });
}
