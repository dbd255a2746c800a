namespace Byrelaw.Judging.Tests.SideBySide;

/// <summary>Two evaluators, one truth: the fast one, and the slow literal one that is the specification.</summary>
public sealed class SideBySideTests
{
    [Fact]
    public void The_judge_says_what_the_reference_says_of_random_rules_and_records() => SayTheSame(JudgingCase.Any, Cases.Count);

    [Fact]
    public void They_say_the_same_of_bulls_and_the_mobs_they_run_with() => SayTheSame(JudgingCase.Bulls, Cases.Count / 2);

    [Fact]
    public void They_say_the_same_where_an_anchor_may_have_been_on_many_days() => SayTheSame(JudgingCase.Doubtful, Cases.Count / 4);

    [Fact]
    public void They_say_the_same_of_entries_that_are_asked_for_by_their_details() => SayTheSame(JudgingCase.Filtered, Cases.Count / 4);

    private static void SayTheSame(Gen<JudgingCase> cases, long count) => Each.Hold(
        cases,
        count,
        one => Difference.Of(one),
        one =>
        {
            var smaller = Smaller.Of(one);
            return $"{Difference.Of(smaller)}\n{smaller}";
        });
}
