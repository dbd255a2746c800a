namespace Byrelaw.Reporting.Explaining;

/// <summary>The one reason for an answer, short enough for a line of the draft list.</summary>
public static class Reason
{
    /// <summary>Such as <c>Eight weeks calved: 43 of 56 days; ready from 2 Nov</c>.</summary>
    public static string Of(AnimalReport report)
    {
        var (list, animal) = (report.On, report.Animal);
        var chief = ChiefRule.Of(report);
        var found = chief is null ? "" : Named(chief, WhyNotMet(chief, list));
        return animal.Answer switch
        {
            Answer.Ready => Ready(report),
            Answer.OnCourse => ReachWords.IfNothingHappens(list.Herd, list.Long),
            _ when chief is { Answer: RuleAnswer.Broken } => $"{chief.Name}: the rule cannot be read",
            Answer.Later when chief is not null => $"{found}; {WhenLater.Of(report, list.Short)}",
            Answer.Ask when chief is { Answer: RuleAnswer.NotKnown } => AskedFor(chief, report),
            Answer.Ask when list.List.IsBroken => "lines of the rule files cannot be read",
            Answer.No when animal.NeverTogether is [var one, var other, ..] => $"{one} and {other} never hold together",
            _ when chief is { Gate: not Gate.None } => GateReason(chief, list),
            _ when chief is not null => found,
            _ => AnswerWords.Meaning(animal.Answer),
        };
    }

    /// <summary>How many of the list's own rules there are that apply to her.</summary>
    public static int RulesThatApply(AnimalJudgement animal) =>
        animal.Rules.Count(rule => rule.Gate == Gate.None && rule.Answer != RuleAnswer.DoesNotApply && rule.Rule?.OnTheDay != true);

    /// <summary>What was found; of a rule that asks nobody, that it is not known; of one that lapses within the judging days, on which it is good.</summary>
    private static string WhyNotMet(RuleJudgement rule, ListReport list)
    {
        var good = WhenLater.Good(rule, list, list.Short);
        return (rule.Replaced == IfNotKnown.Exclude ? "not known, and this rule asks nobody" : RuleWords.Told(rule, list)) + (good.Length == 0 ? "" : $"; {good}");
    }

    /// <summary>A rule's name and what was found, without saying one thing twice: <c>Body condition: 3.5, 2 Oct</c>.</summary>
    private static string Named(RuleJudgement rule, string told) =>
        told.StartsWith(rule.Name + " ", StringComparison.OrdinalIgnoreCase) ? $"{rule.Name}: {told[(rule.Name.Length + 1)..]}" : $"{rule.Name}: {told}";

    private static string Ready(AnimalReport report)
    {
        var shaky = report.Animal.Rules.FirstOrDefault(rule => rule.IsShaky);
        if (shaky is not null)
        {
            return $"{Named(shaky, RuleWords.Told(shaky, report.On))}, shaky";
        }

        var rules = RulesThatApply(report.Animal);
        var all = rules switch { 0 => "no rule in the way", 1 => "the one rule is met", 2 => "both rules met", _ => $"all {rules} rules met" };
        return report.Animal.ReadyUntil is { } until ? $"{all}, until {report.On.Short(until)}" : all;
    }

    /// <summary>What the rule lacks, and when to get it: <c>Not in calf: no scan; from 18 to 20 Oct</c>.</summary>
    private static string AskedFor(RuleJudgement rule, AnimalReport report)
    {
        IReadOnlyList<Missing> missing = report.Jobs.FirstOrDefault(job => job.Rules.Contains(rule.Name)) is { } job ? job.Ways[0]
            : RuleWords.Missing(rule) is { Count: > 0 } hers ? hers : report.Animal.Settle;
        var asked = Asked.Of(missing);
        return asked.Count == 0
            ? Named(rule, "not known") + InTime(report, null)
            : Named(rule, MissingWords.Brief(asked[0], report.On) + (asked.Count > 1 ? " ..." : "")) + InTime(report, asked[0].First);
    }

    /// <summary>When what is named can be of use: a scan too early clears nobody, whatever else is asked for before it.</summary>
    private static string InTime(AnimalReport report, Missing? named)
    {
        var list = report.On;
        if (report.IsOutOfTime || report.LastUsefulDay is not { } soonest)
        {
            return report.IsOutOfTime ? "; no longer in time" : "";
        }

        var last = named is null || report.LastDayFor(named) < soonest ? soonest : report.LastDayFor(named);
        var more = last > soonest && list.IsAhead(soonest) ? $"{(list.IsAhead(last) ? "," : ";")} and more by {list.Short(soonest)}" : "";
        return !list.IsAhead(last) ? more
            : named?.From is { } first && list.IsAhead(first) && first <= last ? $"; {(first < last ? $"from {list.Short(first)} to" : "on")} {list.Short(last)}{more}"
            : $"; by {list.Short(last)}{more}";
    }

    private static string GateReason(RuleJudgement gate, ListReport list)
    {
        var records = RuleWords.Records(gate, list);
        return RuleWords.Found(gate, list) + (records.Length == 0 ? "" : $": {records}");
    }
}
