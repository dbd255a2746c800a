namespace Byrelaw.Workshop.Tests.Comparing;

public sealed class RandomComparisonTests
{
    [Fact]
    public void A_rulebook_compared_with_itself_shows_nothing() => RandomRules.File.Hold(
        text =>
        {
            var (once, again) = (Rules.Read(text).Rulebook, Rules.Read(text).Rulebook);
            RulebookComparison.Of(once, again).Differences.ShouldBeEmpty(text);
        },
        count: 200);

    [Fact]
    public void Nothing_differs_exactly_if_the_fingerprints_are_one() => Gen.Select(RandomRules.File, RandomRules.File).Hold(
        (one, other) =>
        {
            var (old, @new) = (Rules.Read(one).Rulebook, Rules.Read(other).Rulebook);
            RulebookComparison.Of(old, @new).IsEmpty.ShouldBe(Fingerprint.Of(old) == Fingerprint.Of(@new), $"{one}\n-----\n{other}");
        },
        count: 150);

    [Fact]
    public void All_differences_mixed_in_say_what_the_new_rulebook_says_and_none_what_the_old_one_said() => Gen.Select(RandomRules.File, RandomRules.File).Hold(
        (one, other) =>
        {
            var (old, @new) = (Rules.Read(one).Rulebook, Rules.Read(other).Rulebook);
            var between = RulebookComparison.Of(old, @new);
            Demands(between.Mix([]), between.NameNow).ShouldBe(Demands(old, between.NameNow), one);
            Demands(between.Mix(between.Differences), name => name).ShouldBe(Demands(@new, name => name), other);
        },
        count: 150);

    private static IEnumerable<string> Demands(Rulebook rulebook, Func<string, string> nameNow) =>
        rulebook.Rules.Select(rule => $"{nameNow(rule.Name)} {rule.List} {rule.Audience} {CanonicalText.Of(rule.Needs)} {rule.IfNotKnown} {rule.OnTheDay} {rule.IsBroken}")
            .Concat(rulebook.Prefers.Select(prefer => $"{nameNow(prefer.Name)} {CanonicalText.Of(prefer.Condition)} {prefer.Counts}"))
            .Concat(rulebook.Waivers.Select(waiver => $"{nameNow(waiver.Rule)} {waiver.Animal} {waiver.Until}"))
            .Order(StringComparer.Ordinal);
}
