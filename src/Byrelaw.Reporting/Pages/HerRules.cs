namespace Byrelaw.Reporting.Pages;

/// <summary>The rules of an animal's page: what matters in full view, the rest folded away.</summary>
internal static class HerRules
{
    /// <summary>The rules of both checks at the first session, what is in the way first, each once.</summary>
    public static ImmutableArray<(RuleJudgement Rule, AnimalReport Report)> Of(HerReports her) =>
    [
        .. her.OfMainSession.SelectMany(report => RuleOrder.Of(report.Animal).Select(rule => (Rule: rule, Report: report)))
            .DistinctBy(one => (one.Rule.Name, one.Rule.Answer, RuleWords.Found(one.Rule, one.Report.On))).OrderBy(one => PlaceOf(one.Rule)),
    ];

    /// <summary>Whether anybody must see it: against her, not known, about to lapse, let pass, waived, changed here, or for the day.</summary>
    public static bool Matters(RuleJudgement rule) => PlaceOf(rule) < 6;

    public static Table Table(string caption, IEnumerable<(RuleJudgement Rule, AnimalReport Report)> rules, bool says)
    {
        var table = new Table(caption, "rule", "found", "asked for", "how long", "written in");
        foreach (var (rule, report) in rules)
        {
            table.Add($"{(says ? Says(rule) : "")}{rule.Name}", RuleWords.Found(rule, report.On), RuleWords.Needed(rule), says ? RuleWords.Settles(rule, report.On) : HowLong(rule, report.On), RuleWords.Records(rule, report.On));
        }

        return table;
    }

    /// <summary>That a rule holds stands over the table.</summary>
    private static string HowLong(RuleJudgement rule, ListReport list) => RuleWords.Settles(rule, list) is var settles && settles.StartsWith("holds", StringComparison.Ordinal) ? settles["holds".Length..].TrimStart(',', ' ') : settles;

    private static string Says(RuleJudgement rule) => PlaceOf(rule) switch
    {
        0 => "! Cannot be read: ",
        1 => "✗ Against her: ",
        2 => "? Not known: ",
        3 when rule.Waiver is not null => "✓ Waived: ",
        3 when rule.Replaced == IfNotKnown.Pass => "✓ Not looked at, let pass: ",
        3 => "✓ Holds, but only just: ",
        4 => "✓ Holds, changed here: ",
        _ => "☐ On the day: ",
    };

    private static int PlaceOf(RuleJudgement rule) => rule switch
    {
        { Answer: RuleAnswer.Broken } => 0,
        { InTheWay: true, Answer: RuleAnswer.NotMet } => 1,
        { InTheWay: true } => 2,
        { Answer: RuleAnswer.DoesNotApply } => 7,
        { Rule.OnTheDay: true } => 5,
        _ when rule.Waiver is not null || rule.Replaced != IfNotKnown.Ask || rule.IsShaky => 3,
        { Rule.Before: not null } => 4,
        _ => 6,
    };
}
