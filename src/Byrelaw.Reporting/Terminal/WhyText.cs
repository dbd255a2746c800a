namespace Byrelaw.Reporting.Terminal;

/// <summary>One animal's explanation for a terminal.</summary>
public static class WhyText
{
    private const int WidestColumn = 44;

    /// <summary>The explanation, with line ends LF.</summary>
    /// <param name="report">The animal on one list.</param>
    /// <param name="all">Whether rules that are simply met, or do not apply, are listed too.</param>
    /// <param name="ink">How text is set off.</param>
    public static string Of(AnimalReport report, bool all, Ink ink)
    {
        var (list, animal) = (report.On, report.Animal);
        var known = list.Draft.KnownOn is { } day ? $", as known on {Dates.Long(day)})" : ")";
        var text = new DocumentBuilder()
            .Sentence($"{Wording.Bold(animal.Number)} · {list.NameAndDays} ({ReachWords.Of(list.Herd)}{known}").Gap().In(1)
            .Sentence(Wording.Bold($"{AnswerWords.Shape(animal.Answer)} {Headline.Of(report)}."))
            .Sentence(PlannedWords.Of(report))
            .Sentence(WhyNot.Of(report, withClauses: true))
            .Sentence(SmallestChange.Of(report))
            .Sentence(string.Join(" ", DoubtsAboutHer.Of(report)))
            .Sentence($"To do: {ToDo.Of(report)}")
            .Sentence(BewareWords.Of(report) is { Length: > 0 } beware ? $"Beware: {beware}" : "").Gap();
        if (Story.Of(report) is { Count: > 0 } story)
        {
            text.Sentence(string.Join(" · ", story)).Gap();
        }

        var shown = RuleOrder.Of(animal).Where(rule => all || (report.IsGone ? rule.Gate == Gate.InTheHerd : IsWorthALine(rule))).ToList();
        return text.Table(Rules(shown, list)).Sentence(Hidden([.. animal.Rules.Except(shown)])).Gap().Sentence(Wording.Faint(Page.Foot)).OnTerminal(ink);
    }

    private static Table Rules(IEnumerable<RuleJudgement> shown, ListReport list)
    {
        // A rule's name stands after its shape and a blank.
        var table = new Table("Rules", new Column("", Most: 2 + WidestColumn), new Column("", Most: WidestColumn), new Column("", Most: WidestColumn), "");
        foreach (var rule in shown)
        {
            var changed = rule.Rule is { Before: not null } written ? $"changed here: {Changes(written, list)}" : "";
            table.Add(
                $"{RuleAnswerWords.Shape(rule)} {(rule.InTheWay ? Wording.Bold(rule.Name) : rule.Name)}",
                RuleWords.Found(rule, list),
                RuleWords.Settles(rule, list),
                Wording.Faint(string.Join("; ", new[] { RuleWords.Records(rule, list), changed }.Where(part => part.Length > 0))));
        }

        return table;
    }

    private static string Hidden(List<RuleJudgement> hidden)
    {
        var onTheDay = hidden.Count(rule => rule.Rule?.OnTheDay == true && rule.Answer != RuleAnswer.DoesNotApply);
        var met = hidden.Count(rule => rule.Rule?.OnTheDay != true && rule.Answer == RuleAnswer.Met);
        var not = hidden.Count(rule => rule.Answer == RuleAnswer.DoesNotApply);
        var more = hidden.Count - onTheDay - met - not;
        string[] parts =
        [
            met > 0 ? $"{met} more met" : "",
            not == 1 ? "1 does not apply" : not > 0 ? $"{not} do not apply" : "",
            onTheDay > 0 ? $"{onTheDay} judged on the day" : "",
            more > 0 ? $"{more} that no longer matter" : "",
        ];
        return hidden.Count == 0 ? "" : $"… {string.Join(", ", parts.Where(part => part.Length > 0))}: --all shows them";
    }

    private static bool IsWorthALine(RuleJudgement rule) =>
        rule.InTheWay || rule.IsShaky || rule.Waiver is not null || (rule.Replaced != IfNotKnown.Ask && RuleWords.Evidence(rule).Any())
        || rule.Rule is { Basis: Basis.Changed or Basis.Local, OnTheDay: false } && rule.Answer != RuleAnswer.DoesNotApply;

    /// <summary>What it was before each change, the latest first, with who agreed to the change.</summary>
    private static string Changes(Rule rule, ListReport list)
    {
        var changes = new List<string>();
        for (var version = rule; version.Before is { } before; version = before)
        {
            var agreed = version.Agreement is { } agreement ? $" ({Phrases.And(agreement.By)}, {list.Long(agreement.On)})" : "";
            changes.Add((LocalPractice.Added(version, before) is { } besides ? $"asked here besides: {ConditionWords.Of(besides)}" : $"was {ConditionWords.Of(before.Shown)}") + agreed);
        }

        return string.Join("; before that ", changes);
    }
}
