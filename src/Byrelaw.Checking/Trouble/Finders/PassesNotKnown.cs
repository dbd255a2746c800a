namespace Byrelaw.Checking.Trouble.Finders;

/// <summary>
/// Rules that let pass what is not known, where an animal that nobody tested, or of whom nobody wrote down what happened, may be
/// the very one that the rule is there to keep out.
/// </summary>
internal static class PassesNotKnown
{
    public static IEnumerable<TroubleFound> Find(Study study)
    {
        foreach (var rule in study.Rules.Select(rule => rule.Rule).Where(rule => rule.IfNotKnown == IfNotKnown.Pass))
        {
            var risk = rule.Needs.Leaves(study.Rulebook).Select(RiskOf).FirstOrDefault(risk => risk is not null);
            if (risk is var (of, may) && study.Show.PassesNotKnown(TroubleProblems.PassesNotKnown(rule, of, may), rule) is { } shown)
            {
                yield return new TroubleFound(TroubleSort.PassesNotKnown, rule.Name, null, shown);
            }
        }
    }

    /// <summary>What may be true of an animal that passes; null where neither pregnancy nor disease can hide.</summary>
    private static Risk? RiskOf(Condition condition) => condition switch
    {
        TestCondition test => OfTest(test.Test, test.IsNot
            ? test.Answers
            : Enumerable.Range(0, test.Test.Answers.Length).Except(test.Answers)),
        CountCondition { Counted: [{ Kind: TestKind test }, ..] } count when IsNone(count.Test) =>
            OfTest(test, count.Counted.Where(one => one.Kind == test).Select(one => one.Answer)),
        CountCondition { Counted: [{ Kind: EventKind happened }, ..] } count when IsNone(count.Test) =>
            new Risk($"whether they had `{happened.Name}`", "some may have had it"),
        SpellCondition { Not: true } spell => new Risk($"whether they were `{spell.Spell.Name}`", "some may have been"),
        _ => null,
    };

    private static Risk OfTest(TestKind test, IEnumerable<int> bad) =>
        new($"what `{test.Name}` says", $"in some it may be {string.Join(" or ", bad.Select(answer => $"`{test.Answers[answer]}`"))}");

    private static bool IsNone(CountTest test) => test is { Comparison: Comparison.Exactly or Comparison.AtMost, Low: 0 } or { Comparison: Comparison.LessThan, Low: 1 };

    private sealed record Risk(string Of, string May);
}
