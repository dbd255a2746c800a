namespace Byrelaw.Reporting.Explaining;

/// <summary>Why this answer rather than the better one, in one sentence.</summary>
public static class WhyNot
{
    /// <summary>Such as <c>Out rather than Ready because of Eight weeks calved (43 of 56 days).</c></summary>
    /// <param name="report">The animal.</param>
    /// <param name="withClauses">Whether each rule is told with what was found and what is asked for; without, only its name.</param>
    public static string Of(AnimalReport report, bool withClauses)
    {
        var (list, animal) = (report.On, report.Animal);
        return animal.Answer switch
        {
            Answer.Ready => Closest(report),
            Answer.OnCourse => OnCourse(report),
            Answer.Later when animal.NotBefore is not null => $"Out rather than Ready because of {Because(report, RuleAnswer.NotMet, withClauses)}; {Then(report)}.",
            Answer.Ask when report.InTheWay.Any(rule => rule.Answer == RuleAnswer.Broken) || list.List.IsBroken =>
                "Ask rather than Ready because lines of the rule files cannot be read, and a broken rule lets no animal through.",
            Answer.Ask => $"Ask rather than Ready because of {Because(report, RuleAnswer.NotKnown, withClauses)}. Ask rather than No because no record rules her out.",
            Answer.No when animal.NeverTogether is [var one, var other, ..] =>
                $"Out rather than Later because {one} and {other} each hold on some later day, but never together.",
            _ => $"Out rather than Ready because of {Because(report, RuleAnswer.NotMet, withClauses)}.",
        };
    }

    /// <summary>What is not known on the first later stretch on which no rule fails.</summary>
    private static string Then(AnimalReport report)
    {
        var rules = report.OpenThen.Select(rule => rule.Name).ToList();
        var day = WhenLater.From(report.Animal.NotBefore!.Value, report.On, report.On.Long);
        return rules.Count == 0 ? $"{day} it is not known whether the rules hold"
            : $"{day} {Phrases.And(rules)} {(rules.Count == 1 ? "is" : "are")} not known";
    }

    private static string Because(AnimalReport report, RuleAnswer answer, bool withClauses)
    {
        var chief = ChiefRule.Of(report);
        var rules = report.InTheWay.Where(rule => report.IsGone ? ReferenceEquals(rule, chief) : rule.Answer == answer).ToList();
        var said = rules.OrderBy(rule => ReferenceEquals(rule, chief) ? 0 : 1).Take(2)
            .Select(rule => withClauses ? $"{rule.Name} ({Clause(rule, report.On)})" : rule.Name).ToList();
        if (rules.Count > 2)
        {
            said.Add(Numbers.Count(rules.Count - 2, "more rule", "more rules"));
        }

        return said.Count == 0 ? "rules that do not hold on one day" : Phrases.And(said);
    }

    /// <summary>What was found and what is asked for: the clause and the value, not only the rule's name.</summary>
    private static string Clause(RuleJudgement rule, ListReport list) =>
        rule.Rule is null ? RuleWords.Found(rule, list) : $"{RuleWords.Told(rule, list)}; asked for: {RuleWords.Needed(rule)}";

    private static string OnCourse(AnimalReport report)
    {
        var rules = report.Animal.Rules.Where(rule => rule is { Expected: true, Answer: RuleAnswer.Met } && rule.Rule?.OnTheDay != true).Select(rule => rule.Name).ToList();
        var rest = rules.Count == 1 ? "rests" : "rest";
        var day = report.On.Long(report.On.Herd.KnownDay);
        return !report.On.Herd.ReachesADay ? $"On course rather than Ready because {ReachWords.Of(report.On.Herd)}."
            : rules.Count == 0
            ? $"On course rather than Ready because the records end on {day}."
            : $"On course rather than Ready because {Phrases.And(rules)} {rest} on days after {day}, when the records end.";
    }

    private static string Closest(AnimalReport report)
    {
        var shaky = report.Animal.Rules.Where(rule => rule.IsShaky).ToList();
        return shaky.Count == 0
            ? "Ready rather than On course because nothing here rests on days after the records end."
            : $"Ready, but shaky: {string.Join("; ", shaky.Select(rule => $"{rule.Name}, {RuleWords.Found(rule, report.On)}"))}.";
    }
}
