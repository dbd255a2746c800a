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
    public static bool Matters(RuleJudgement rule) => PlaceOf(rule) < Place.Holds;

    /// <summary>A table of rules. A rule that both checks have, and that says two things, names its list.</summary>
    public static Table Table(string caption, IEnumerable<(RuleJudgement Rule, AnimalReport Report)> rules, bool says)
    {
        var table = new Table(caption, "rule", "found", "asked for", "how long", "written in");
        var shown = rules.ToList();
        var twice = shown.GroupBy(one => one.Rule.Name).Where(group => group.Count() > 1).Select(group => group.Key).ToHashSet();
        foreach (var (rule, report) in shown)
        {
            table.Add($"{(says ? Says(rule) : "")}{rule.Name}{(twice.Contains(rule.Name) ? $" ({report.On.Name})" : "")}", RuleWords.Found(rule, report.On), RuleWords.Needed(rule), says ? RuleWords.Settles(rule, report.On) : HowLong(rule, report.On), RuleWords.Records(rule, report.On));
        }

        return table;
    }

    /// <summary>That a rule holds stands over the table.</summary>
    private static string HowLong(RuleJudgement rule, ListReport list) => RuleWords.Settles(rule, list) is var settles && settles.StartsWith("holds", StringComparison.Ordinal) ? settles["holds".Length..].TrimStart(',', ' ') : settles;

    private static string Says(RuleJudgement rule) => PlaceOf(rule) switch
    {
        Place.Unreadable => "! Cannot be read: ",
        Place.Against => "✗ Against her: ",
        Place.NotKnown => "? Not known: ",
        Place.LookedAt when rule.Waiver is not null => "✓ Waived: ",
        Place.LookedAt when rule.Replaced == IfNotKnown.Pass => "✓ Not looked at, let pass: ",
        Place.LookedAt => "✓ Holds, but only just: ",
        Place.Changed => "✓ Holds, changed here: ",
        _ => "☐ On the day: ",
    };

    private static Place PlaceOf(RuleJudgement rule) => rule switch
    {
        { Answer: RuleAnswer.Broken } => Place.Unreadable,
        { InTheWay: true, Answer: RuleAnswer.NotMet } => Place.Against,
        { InTheWay: true } => Place.NotKnown,
        { Answer: RuleAnswer.DoesNotApply } => Place.DoesNotApply,
        { Rule.OnTheDay: true } => Place.OnTheDay,
        _ when rule.Waiver is not null || rule.Replaced != IfNotKnown.Ask || rule.IsShaky => Place.LookedAt,
        { Rule.Before: not null } => Place.Changed,
        _ => Place.Holds,
    };

    /// <summary>Why a rule stands where it stands, what is in the way first.</summary>
    private enum Place
    {
        Unreadable,
        Against,
        NotKnown,

        /// <summary>Waived, let pass, or about to lapse.</summary>
        LookedAt,
        Changed,
        OnTheDay,
        Holds,
        DoesNotApply,
    }
}
