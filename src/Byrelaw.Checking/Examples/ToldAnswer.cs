namespace Byrelaw.Checking.Examples;

/// <summary>An answer in the terms of expectations.</summary>
/// <param name="Answer">Its words; <c>broken</c> for a rule that could not be read.</param>
/// <param name="From">Since when, or from when.</param>
/// <param name="Until">The first day with another answer; null for none within a year.</param>
/// <param name="NotBefore">For a list's Later.</param>
/// <param name="BecauseOf">What it rests on.</param>
/// <param name="Missing">What would settle it.</param>
internal sealed record ToldAnswer(
    string Answer, LocalDate? From, LocalDate? Until, LocalDate? NotBefore, ImmutableArray<string> BecauseOf, ImmutableArray<string> Missing)
{
    /// <summary>The outcome of an expectation's trial.</summary>
    public static ToldAnswer Of(Expectation expectation, AnimalJudgement animal, LocalDate judged) =>
        expectation.Of == ExpectationOf.List ? OfList(animal) : OfRule(animal.Rules.First(rule => rule.Gate == Gate.None), expectation.Of, judged);

    /// <summary>Whether it is what was expected.</summary>
    public bool Fits(Expectation expected) =>
        Answer == ExpectedAnswerWords.Of(expected.Answer)
        && (expected.From is null || expected.From == From)
        && (expected.Until is null || expected.Until == Until)
        && (expected.NotBefore is null || expected.NotBefore == NotBefore)
        && expected.BecauseOf.All(BecauseOf.Contains)
        && (expected.Missing.IsEmpty || expected.Missing.ToHashSet().SetEquals(Missing));

    private static ToldAnswer OfRule(RuleJudgement rule, ExpectationOf of, LocalDate judged)
    {
        Finding[] deciding = [.. rule.Findings.Where(finding => finding.Decides)];
        var reasons = deciding.SelectMany(finding => finding.Through.Concat(
            finding.Evidence.Select(evidence => evidence.Kind?.Name ?? evidence.Fact).OfType<string>()));
        return new ToldAnswer(
            WordsOf(rule.Answer, of), Since(rule, judged), rule.ChangesOn, null,
            [.. reasons.Distinct()], [.. deciding.SelectMany(finding => finding.Missing).Select(missing => missing.Subject).Distinct()]);
    }

    private static ToldAnswer OfList(AnimalJudgement animal) => new(
        animal.Answer switch
        {
            Judging.Verdicts.Answer.Ready => "ready",
            Judging.Verdicts.Answer.OnCourse => "on course",
            Judging.Verdicts.Answer.Later => "later",
            Judging.Verdicts.Answer.Ask => "ask",
            _ => "no",
        },
        animal.ReadyFrom, animal.ReadyUntil?.PlusDays(1), animal.NotBefore,
        [.. animal.Rules.Where(rule => rule.InTheWay).Select(rule => rule.Name)], [.. animal.Settle.Concat(animal.ThenAsk).Select(missing => missing.Subject).Distinct()]);

    private static string WordsOf(RuleAnswer answer, ExpectationOf of) => answer switch
    {
        RuleAnswer.Broken => "broken",
        RuleAnswer.NotKnown => "not known",
        RuleAnswer.DoesNotApply => "does not apply",
        RuleAnswer.Met => of == ExpectationOf.Define ? "true" : "met",
        _ => of == ExpectationOf.Define ? "false" : "not met",
    };

    /// <summary>The first day of the days in a row that have the judged day's truth.</summary>
    private static LocalDate Since(RuleJudgement rule, LocalDate judged)
    {
        var stretches = rule.Timeline.Stretches;
        var at = stretches.Length - 1;
        while (at > 0 && stretches[at].From > judged)
        {
            at--;
        }

        while (at > 0 && stretches[at - 1].Truth == stretches[at].Truth)
        {
            at--;
        }

        return stretches[at].From;
    }
}
