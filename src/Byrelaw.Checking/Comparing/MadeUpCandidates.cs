namespace Byrelaw.Checking.Comparing;

/// <summary>Puts made-up animals together from what two versions of a rule speak of, many of them on a limit. The same each time.</summary>
internal sealed class MadeUpCandidates
{
    private const int MostOfAKind = 2;
    private readonly Random _random = new(7);
    private readonly ImmutableArray<Ingredients> _from;
    private readonly ImmutableArray<LocalDate> _dates;
    private readonly ImmutableArray<LocalDate> _births;
    private readonly ImmutableArray<Kind> _kinds;

    public MadeUpCandidates(LocalDate day, EventKind? calving, params ReadOnlySpan<Ingredients> from)
    {
        _from = [.. from];
        _dates = [.. _from.SelectMany(one => one.Lengths).SelectMany(length => Around(length, day)).Append(day).Append(day.PlusDays(-100)).Where(date => date <= day).Distinct().Order()];
        _births = [.. _from.SelectMany(one => one.Ages).SelectMany(age => Around(age, day)).Append(day.PlusYears(-5)).Where(date => date < day).Distinct().Order()];
        _kinds = [.. _from.SelectMany(one => one.Kinds).Concat(calving is null ? [] : [calving]).DistinctBy(kind => kind.Name)];
    }

    /// <summary>One animal with her rows.</summary>
    public Candidate Next(int number)
    {
        var name = $"{number}";
        var facts = _from.SelectMany(one => one.Facts).GroupBy(fact => fact.Key.Name).ToImmutableDictionary(group => group.Key, group => Any([.. group.SelectMany(fact => fact.Value).Distinct()]));
        int[] parities = [.. _from.SelectMany(one => one.Parities).SelectMany(parity => new[] { parity - 1, parity, parity + 1 }).Where(parity => parity >= 0).Distinct()];
        if (parities.Length > 0)
        {
            facts = facts.Add("parity", $"{Any(parities)}");
        }

        var rows = _kinds.SelectMany(kind => Enumerable.Range(0, _random.Next(MostOfAKind + 1)).Select(_ => Row(name, kind)));
        return new Candidate(new MadeUpAnimal(name) { Born = LocalDatePattern.Iso.Format(Any(_births)), Facts = facts }, [.. rows.OrderBy(row => row.Date)]);
    }

    private MadeUpRow Row(string animal, Kind kind)
    {
        var (value, unit) = kind switch
        {
            MeasureKind measure => (Ingredients.Text(Any([.. _from.SelectMany(one => one.Values.Where(known => known.Key.Name == measure.Name).SelectMany(known => known.Value)).DefaultIfEmpty(1)])), measure.Unit?.Symbol ?? ""),
            TestKind test => (Any(test.Answers), ""),
            _ => ("", ""),
        };
        return new MadeUpRow(Any(_dates), animal, kind.Name, value, unit);
    }

    private T Any<T>(IReadOnlyList<T> of) => of[_random.Next(of.Count)];

    private static IEnumerable<LocalDate> Around(TimeLength length, LocalDate day)
    {
        var on = length.Unit switch
        {
            TimeUnit.Days => day.PlusDays(-length.Count),
            TimeUnit.Weeks => day.PlusWeeks(-length.Count),
            TimeUnit.Months => day.PlusMonths(-length.Count),
            _ => day.PlusYears(-length.Count),
        };
        return [on.PlusDays(-1), on, on.PlusDays(1)];
    }
}
