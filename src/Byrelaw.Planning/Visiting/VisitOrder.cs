namespace Byrelaw.Planning.Visiting;

/// <summary>What sets one visit apart from the next best, the weightiest first.</summary>
public enum Advantage
{
    /// <summary>No other can be used.</summary>
    OnlyOne,

    /// <summary>A better chance of what is wanted.</summary>
    Chance,

    /// <summary>More of what is wanted is to be expected.</summary>
    Wanted,

    /// <summary>More donors may be used.</summary>
    Donors,

    /// <summary>More recipients may be used.</summary>
    Recipients,

    /// <summary>It costs less.</summary>
    Cost,

    /// <summary>Fewer of its days go badly with weekends, holidays and visits.</summary>
    FewerClashes,

    /// <summary>Fewer tasks are past their last day.</summary>
    FewerTasksPast,

    /// <summary>Nothing but that it is earlier.</summary>
    Earlier,
}

/// <summary>Orders visits that can be used.</summary>
internal static class VisitOrder
{
    /// <summary>Chances closer than this are told apart by what comes after.</summary>
    private const double SameChance = 0.005;

    private static readonly (Advantage Advantage, Func<VisitOption, double> Points)[] Criteria =
    [
        (Advantage.Chance, option => Math.Round((option.Outlook?.Chance ?? 0) / SameChance)),
        (Advantage.Wanted, option => Math.Round(option.Outlook?.Wanted ?? 0, 1)),
        (Advantage.Donors, option => option.Outlook is null ? option.Donors.Count : 0),
        (Advantage.Recipients, option => option.Outlook is null ? option.Recipients.Count : 0),
        (Advantage.Cost, option => option.Outlook is { IsAtLeast: false, Cost: { } cost } ? -cost.Amount : double.NegativeInfinity),
        (Advantage.FewerTasksPast, option => -option.TasksPast.Length),
        (Advantage.FewerClashes, option => -option.Clashes.Length),
        (Advantage.Earlier, option => -(400 * option.Collection.Year) - option.Collection.DayOfYear),
    ];

    /// <summary>The best first.</summary>
    public static List<VisitOption> Best(IEnumerable<VisitOption> options)
    {
        var order = options.OrderByDescending(Criteria[0].Points);
        return [.. Criteria.Skip(1).Aggregate(order, (sorted, criterion) => sorted.ThenByDescending(criterion.Points))];
    }

    /// <summary>The first criterion by which the best beats the next.</summary>
    public static Advantage Why(List<VisitOption> ranked) => ranked.Count < 2
        ? Advantage.OnlyOne
        : Criteria.First(criterion => criterion.Points(ranked[0]) > criterion.Points(ranked[1])).Advantage;
}
