namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// "A chain of N days with such an event, all in the windows, each 18 to 24 days after the one before it in the chain; others between do not matter. A heat whose cause is blank makes, for `with
/// cause own`, a day that may hold one. True: a chain of sure days. False: no chain even of sure and possible days."
/// </summary>
public static class ApartReference
{
    public static Truth At(ApartCondition condition, Knowledge knowledge, Moment moment) =>
        knowledge.Windows.Possible(condition.Windows, moment.Animal, moment.Day, moment.Strict) is { } possible
            ? Kleene.SameForAll(possible.Select(stretch => Over(condition, stretch, knowledge, moment)))
            : Truth.Unknown;

    /// <summary>What it looks at, as a count of the same.</summary>
    public static CountCondition Counting(ApartCondition condition) =>
        new(new CountTest(Comparison.AtLeast, condition.Days, condition.Days), condition.Counted, condition.Windows) { Span = condition.Span };

    /// <summary>The longest chain of sure days, and of sure and possible ones; null where not all days are covered.</summary>
    public static FoundCount Found(ApartCondition condition, IReadOnlyList<Stretch> possible, Knowledge knowledge, Moment moment)
    {
        var least = possible.Min(stretch => Longest(condition, Sure(condition, stretch, knowledge, moment)));
        var isCovered = possible.All(stretch => Kinds(condition).All(kind => knowledge.Coverage.Covers(moment.Animal, kind, stretch.FromFor(kind), stretch.To, moment.Strict)));
        return new FoundCount(least, isCovered ? possible.Max(stretch => Longest(condition, Sure(condition, stretch, knowledge, moment).Concat(Open(condition, stretch, knowledge, moment)))) : null);
    }

    private static Truth Over(ApartCondition condition, Stretch stretch, Knowledge knowledge, Moment moment)
    {
        var sure = Sure(condition, stretch, knowledge, moment).ToList();
        if (Longest(condition, sure) >= condition.Days)
        {
            return Truth.True;
        }

        // Dawn stands for all the days before it: there a chain of any length may lie.
        var dawn = knowledge.Coverage.Dawn;
        var uncovered = Kinds(condition).SelectMany(kind => Enumerable.Range(stretch.FromFor(kind), Math.Max(0, stretch.To - stretch.FromFor(kind) + 1))
            .Where(day => !knowledge.Coverage.Covers(moment.Animal, kind, day, day, moment.Strict))).ToHashSet();
        return uncovered.Contains(dawn) || Longest(condition, sure.Concat(Open(condition, stretch, knowledge, moment)).Concat(uncovered)) >= condition.Days ? Truth.Unknown : Truth.False;
    }

    private static IEnumerable<Kind> Kinds(ApartCondition condition) => condition.Counted.Select(counted => counted.Kind).DistinctBy(kind => kind.Id);

    private static IEnumerable<int> Sure(ApartCondition condition, Stretch stretch, Knowledge knowledge, Moment moment) => condition.Counted.SelectMany(counted =>
        knowledge.Farm.Of(moment.Animal, counted.Kind).Where(row => stretch.Holds(counted.Kind, row.Day) && (counted.Kind is not TestKind || row.Answer == counted.Answer)).Select(row => row.Day));

    /// <summary>Days with a sample of which nobody knows the result, or whether it is hers.</summary>
    private static IEnumerable<int> Open(ApartCondition condition, Stretch stretch, Knowledge knowledge, Moment moment) => condition.Counted.Where(counted => counted.Kind is TestKind).SelectMany(counted =>
        knowledge.Farm.Of(moment.Animal, counted.Kind).Where(row => row.ResultNotKnown)
            .Concat(EitherWayReference.MayBeHers(counted.Kind, stretch, knowledge, moment).Where(row => row.ResultNotKnown || row.Answer == counted.Answer))
            .Where(row => stretch.Holds(counted.Kind, row.Day)).Select(row => row.Day));

    private static int Longest(ApartCondition condition, IEnumerable<int> days)
    {
        var chains = new List<(int From, int To, int Days)>();
        foreach (var day in days.Distinct().Order())
        {
            var before = 0;
            foreach (var chain in chains)
            {
                before = chain.From <= day && day <= chain.To ? Math.Max(before, chain.Days) : before;
            }

            chains.Add((Next(condition, day).From, Next(condition, day).To, before + 1));
        }

        return chains.Select(chain => chain.Days).DefaultIfEmpty(0).Max();
    }

    /// <summary>The days that may follow a day in a chain.</summary>
    private static (int From, int To) Next(ApartCondition condition, int day) => condition.Apart.Comparison switch
    {
        Comparison.AtLeast => (Sums.After(condition.Apart.Low, day), int.MaxValue),
        Comparison.AtMost => (day + 1, Sums.After(condition.Apart.Low, day)),
        _ => (Sums.After(condition.Apart.Low, day), Sums.After(condition.Apart.High, day)),
    };
}
