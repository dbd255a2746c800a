namespace Byrelaw.Language.Canonical;

/// <summary>The statements of a plan the one way.</summary>
internal static class PlanText
{
    /// <summary>All blocks: cautions, methods, visits, assumptions, prices, tasks, each sorted by name.</summary>
    public static IEnumerable<string> Of(PlanStatements plans) =>
    [
        .. Sorted(plans.Cautions, caution => caution.About).Select(caution => RuleText.Block(
            $"caution {NameText.Exact(caution.About)} {NameText.Text(caution.Text)}", RuleText.Reasons(null, caution.Source, null))),
        .. Sorted(plans.Methods, method => method.Name).Select(MethodText.Of),
        .. Sorted(plans.Visits, visits => visits.Name + "\n" + visits.Region).Select(Of),
        .. Sorted(plans.Assumptions, Words).Select(Of),
        .. Sorted(plans.Costs, Words).Select(Of),
        .. Sorted(plans.Tasks, task => task.Name).Select(Of),
        .. plans.Yardsticks.Select(Of).Order(StringComparer.Ordinal),
        .. plans.Done.Select(Of).Order(StringComparer.Ordinal),
        .. plans.Stopped.OrderBy(one => one.Session).Select(one => RuleText.Block($"stopped session {NumberText.Of(one.Session)}", RuleText.Reasons(one.Because, null, one.Agreement))),
    ];

    /// <summary>A share with its evidence.</summary>
    public static string Of(Share share) => NumberText.Of(Math.Round(100 * share.Written, 10)) + "%" + share switch
    {
        { Counted: { } counted } => $", from {NumberText.Of(counted.Hits)} of {NumberText.Of(counted.Of)}{(counted.What is null ? "" : $" {NameText.Exact(counted.What)}")}",
        { Opinion: { } weight } => $", weight {NumberText.Of(weight)}",
        _ => "",
    };

    /// <summary>An amount of money.</summary>
    public static string Of(Money money) => $"{NumberText.Of(money.Amount)} {money.Currency}";

    /// <summary>A day.</summary>
    public static string Of(DayReference day) => day switch
    {
        { Date: { } date } => $"on {NumberText.Of(date)}",
        { Wait.Count: 0, IsBefore: false } => $"on {NameText.Exact(day.Name!)}",
        _ => $"{day.Wait} {(day.IsBefore ? "before" : "after")} {NameText.Exact(day.Name!)}",
    };

    private static string Of(Visits visits) => RuleText.Block(
        Head(visits),
        [
            .. visits.Schedules.Where(schedule => schedule is not AfterVisits).Select(Of).Order(StringComparer.Ordinal),
            visits.DaysOff is { Dates.IsEmpty: true, Weekdays.IsEmpty: true, Holidays: false } ? null : "not on " + string.Join(", ",
                [.. visits.DaysOff.Dates.Select(NumberText.Of), .. visits.DaysOff.Weekdays.Select(day => day + "s"), .. visits.DaysOff.Holidays ? (string[])["holidays"] : []]),
        ]);

    private static string Head(Visits visits)
    {
        var after = visits.Schedules.OfType<AfterVisits>().Select(one => $" {one.Wait} after {NameText.Text(one.Name)}").FirstOrDefault();
        return $"visits {NameText.Text(visits.Name)}{(visits.Region is null ? "" : $" in {NameText.Text(visits.Region)}")}{after}";
    }

    private static string Of(VisitSchedule schedule) => schedule switch
    {
        EveryVisit every => $"every {every.Every} from {NumberText.Of(every.From)} to {NumberText.Of(every.To)}",
        VisitDates dates => $"on {string.Join(", ", dates.Dates.Select(NumberText.Of))}",
        _ => "",
    };

    private static string Words(Assumption one) => QuantityTable.Words(one.Quantity) + QuantityTable.Cases(one);

    private static string Words(CostLine line) => QuantityTable.Words(line.Per) + (line.Method is null ? "" : $" by {NameText.Text(line.Method)}");

    private static string Of(Assumption one)
    {
        var value = one.Share is { } share ? Of(share)
            : NumberText.Of(one.Mean!.Value) + (one.Quantity is AssumedQuantity.Gestation or AssumedQuantity.DaysOfKeepPerRecipient ? " days" : "") + Spread(one.Spread)
                + (one.Weight is { } weight ? $", weight {NumberText.Of(weight)}" : "");
        return RuleText.Block($"assume {Words(one)} {value}", RuleText.Reasons(one.Because, one.Source, one.Agreement));
    }

    private static string Of(CostLine line) => RuleText.Block(
        $"assume {Words(line)} {Of(line.Amount)}{Spread(line.Spread)}", RuleText.Reasons(line.Because, line.Source, null));

    private static string Spread(double? spread) => spread is { } value ? $", spread {NumberText.Of(value)}" : "";

    private static string Of(Yardstick one) => RuleText.Block(
        one.Cost is { } cost ? $"yardstick cost per embryo transferred {Of(cost)}" : $"yardstick {NameText.Text(one.Method!)} used {NumberText.Of(Math.Round(100 * one.Used!.Value, 10))}%",
        RuleText.Reasons(one.Because, one.Source, null));

    private static string Of(TaskDone done) =>
        $"done {NameText.Text(done.Task)} on {NumberText.Of(done.On)}{(done.Session is { } session ? $" for session {NumberText.Of(session)}" : "")}";

    private static string Of(PlanTask task) => RuleText.Block(
        $"task {NameText.Text(task.Name)}",
        [
            task.IsNotNeeded ? "not needed" : null,
            task.List is { } list ? $"for {list}" : null,
            task.EachSession ? "each session" : null,
            task.IsDecision ? $"decided by {string.Join(", ", task.DecidedBy.Select(NameText.Text))}" : null,
            task.IfStopped is { } stopped ? $"if stopped {NameText.Text(stopped)}" : null,
            task.IsNotNeeded || task.Due is not { } due ? null : $"due {Of(due)}",
            task.NotBefore is { } early ? $"not before {(Of(early) is var day && day.StartsWith("on ", StringComparison.Ordinal) ? day[3..] : day)}" : null,
            task.Takes is { } takes ? $"takes {takes}" : null,
            task.ResultsTake is { } results ? $"results take {results}" : null,
            task.SettlesRules.IsEmpty && task.SettlesKinds.IsEmpty ? null : "settles " + string.Join(", ",
                [.. task.SettlesRules.Select(NameText.Text), .. task.SettlesKinds.Select(kind => NameText.Exact(kind.Name))]),
            task.Cost is { } cost ? $"costs {Of(cost.Amount)}{(cost.IsPerAnimal ? " per animal" : "")}" : null,
            .. RuleText.Reasons(task.Because, task.Source, null),
        ]);

    private static IEnumerable<T> Sorted<T>(IEnumerable<T> items, Func<T, string> name) => items.OrderBy(item => NameFolding.Fold(name(item)), StringComparer.Ordinal);
}
