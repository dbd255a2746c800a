using Byrelaw.Checking.Examples;

namespace Byrelaw.Checking.Coverage;

/// <summary>What worked examples show of one rule or preference.</summary>
/// <param name="Name">The rule's.</param>
/// <param name="List">Whose list it is for.</param>
/// <param name="Span">Where.</param>
/// <param name="HasExample">Whether any example expects something of it.</param>
/// <param name="NotShown">The sides of its numbers that no example touches, in words; all of them where it has no example.</param>
public sealed record RuleCoverage(string Name, string List, SourceSpan Span, bool HasExample, ImmutableArray<string> NotShown)
{
    private const string NotHers = "an animal that it does not apply to";

    /// <summary>Holds the rules of a rulebook to examples, its own and others'.</summary>
    public static ImmutableArray<RuleCoverage> Of(Rulebook rulebook, IEnumerable<ExampleOutcome> examples)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        var touched = new HashSet<(string File, int Start, string Side)>();
        var expected = new HashSet<(string Path, int Start)>();
        var doesNotApply = new HashSet<(string Path, int Start)>();
        foreach (var (example, expectation) in examples.SelectMany(outcome => outcome.Expectations.Select(expectation => (outcome.Example, expectation))))
        {
            if (expectation.Rule is { } judged)
            {
                Touch(example, expectation, judged, touched);
                var place = Place(judged.Rule!.Span);
                expected.Add(place);
                if (judged.Answer == RuleAnswer.DoesNotApply)
                {
                    doesNotApply.Add(place);
                }
            }
        }

        return [
            .. rulebook.Rules.Select(rule => Of(
                rule.Name, rule.List, rule.Span, expected, Shown(rule, rulebook, touched).Concat(
                    rule.Audience == Audience.Everyone || doesNotApply.Contains(Place(rule.Span)) ? [] : [NotHers]))),
            .. rulebook.Prefers.Select(prefer => Of(
                prefer.Name, prefer.List, prefer.Span, expected, NotTouched(prefer.Condition.Leaves(rulebook), touched))),
        ];
    }

    private static RuleCoverage Of(string name, string list, SourceSpan span, HashSet<(string, int)> expected, IEnumerable<string> notShown) =>
        new(name, list, span, expected.Contains(Place(span)), [.. notShown.Distinct()]);

    private static IEnumerable<string> Shown(Rule rule, Rulebook rulebook, HashSet<(string, int, string)> touched) =>
        NotTouched([.. rule.AppliesTo is { } named ? named.Leaves(rulebook) : [], .. rule.Needs.Leaves(rulebook)], touched);

    private static IEnumerable<string> NotTouched(List<Condition> leaves, HashSet<(string File, int Start, string Side)> touched) =>
        leaves.SelectMany(leaf => Sides.Of(leaf).Where(side => !touched.Contains((Place(leaf).File, Place(leaf).Start, side))));

    /// <summary>Of a rule that is not for her only what tells whom it is for is touched.</summary>
    private static void Touch(Example example, ExpectationOutcome expectation, RuleJudgement judged, HashSet<(string, int, string)> touched)
    {
        var herd = expectation.Draft.Herd;
        var touches = new Touches(example, herd, expectation.Animal.Animal);
        var audience = judged.Rule!.AppliesTo is { } named ? named.Leaves(expectation.Draft.Rulebook).Select(Place).ToHashSet() : [];
        foreach (var finding in judged.Findings)
        {
            var (file, start) = Place(finding.Condition);
            if (judged.Answer != RuleAnswer.DoesNotApply || audience.Contains((file, start)))
            {
                touched.UnionWith(touches.Of(finding).Select(side => (file, start, side)));
            }
        }
    }

    /// <summary>Where a condition stands, which tells it from every other, in whatever rulebook it is read.</summary>
    private static (string File, int Start) Place(Condition condition) => Place(condition.Span);

    private static (string File, int Start) Place(SourceSpan span) => (span.File.Path, span.Start);
}
