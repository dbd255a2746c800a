namespace Byrelaw.Reporting.Plans;

/// <summary>What the numbers rest on, each with its evidence and where it is written.</summary>
internal static class AssumptionsPart
{
    public static Part Of(Plan plan)
    {
        var used = plan.Numbers.Reading.Used.Concat(plan.Calendar.Calving.Sessions.SelectMany(session => session.InCows?.Assumed ?? [])).Distinct().ToList();
        var table = new Table("Assumptions used", "what", "is", "resting on", "source", "written in");
        foreach (var one in used)
        {
            table.Add(
                Wording.Bold(Name(one)), Value(one), Evidence(one), one.Source ?? one.Because ?? "none given",
                one.Span.File is null ? "" : $"{FileWords.Short(one.Span.File.Path)} line {one.Span.Line}");
        }

        return table.IsEmpty ? Part.None : new DocumentBuilder().Heading(2, "What the numbers rest on").Table(table).As("assumptions");
    }

    internal static string Name(Assumption one) => PlanWords.Of(one.Quantity)
        + (one.State is { } state ? state == EmbryoState.Fresh ? " fresh" : " frozen" : "")
        + (one.Breed is { } breed ? $" of {breed}" : "")
        + (one.In is { } animals ? $" in {CarrierWords.Of(animals)}" : "")
        + (one.WithSexedSemen ? " with sexed semen" : "")
        + (one.Donor is { } donor ? $" of {donor}" : "");

    private static string Value(Assumption one) => one.Share is { } share ? ChanceWords.Rate(share.Value)
        : Numbers.Of(one.Mean!.Value) + (one.Spread is { } spread ? $", spread {Numbers.Of(spread)}" : "");

    internal static string Evidence(Assumption one) => one.Share switch
    {
        { Counted: { } count } => $"{count.Hits} of {count.Of}{(count.What is null ? "" : $" {count.What}")}",
        { Opinion: { } weight } => $"an opinion worth {Numbers.Of(weight)} animals",
        { } => "taken as exact",
        null => "",
    };
}
