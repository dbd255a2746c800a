namespace Byrelaw.Reporting.Explaining;

/// <summary>When an animal that is Later is ready, or to be asked about.</summary>
public static class WhenLater
{
    /// <summary>
    /// <c>ready from 2 November</c>, <c>ready on 21 October only</c>, <c>not before 2 November, then still to be asked</c>, or both:
    /// <c>ready from 30 November; from 27 October, if what is not known then turns out well</c>.
    /// </summary>
    /// <param name="report">The animal.</param>
    /// <param name="said">How a date is written.</param>
    public static string Of(AnimalReport report, Func<LocalDate, string> said) => (report.Animal.ReadyFrom, report.Animal.NotBefore) switch
    {
        ({ } ready, null) => $"{Ready(report)} {From(ready, report.On, said)}{TooLate(ready, report)}",
        ({ } ready, { } asked) => $"{Ready(report)} {From(ready, report.On, said)}{TooLate(ready, report)}; {From(asked, report.On, said)}, if what is not known then turns out well{TooLate(asked, report)}",
        (null, { } asked) when IsJudged(asked, report.On) => $"{From(asked, report.On, said)}, and still to be asked",
        (null, { } asked) => $"not before {said(asked)}, then still to be asked{TooLate(asked, report)}",
        _ => "",
    };

    private static string Ready(AnimalReport report) => report.On.Use == ListUse.ForLookingOnly ? "matches" : "ready";

    /// <summary>From a day on, or where it is one of those that are judged <c>on 21 October only</c>.</summary>
    public static string From(LocalDate day, ListReport list, Func<LocalDate, string> said)
    {
        var last = list.List.Choice.JudgedTo;
        return !IsJudged(day, list) ? $"from {said(day)}" : day == last ? $"on {said(day)} only" : $"from {said(day)} to {said(last)} only";
    }

    /// <summary>Of a rule that is met on the first judging days and lapses before the last: <c>good on 20 October only</c>; else empty.</summary>
    public static string Good(RuleJudgement rule, ListReport list, Func<LocalDate, string> said)
    {
        var (first, last) = (list.List.Choice.JudgedFrom, list.List.Choice.JudgedTo);
        var good = first;
        while (good <= last && rule.Timeline.At(good).Truth == Truth.True)
        {
            good = good.PlusDays(1);
        }

        return rule.Answer != RuleAnswer.NotMet || good == first || good > last ? ""
            : good.PlusDays(-1) == first ? $"good on {said(first)} only" : $"good from {said(first)} to {said(good.PlusDays(-1))} only";
    }

    private static bool IsJudged(LocalDate day, ListReport list) => day <= list.List.Choice.JudgedTo;

    private static string TooLate(LocalDate day, AnimalReport report) => report.IsPast(day) ? ", too late for this programme" : "";
}
