using Byrelaw.Records.Sources;

namespace Byrelaw.Records.Building;

/// <summary>
/// What a sheet with a row for each animal says of last entries counts as a promise of the kind: for her it holds from that entry to the day of
/// which the sheet is true, and never before. For everybody of whom the sheet says nothing those days are left out.
/// </summary>
/// <param name="last">What is said.</param>
/// <param name="places">Finds animals by their numbers.</param>
/// <param name="runs">By kind id: what is on record.</param>
internal sealed class KeptSinceLast(ImmutableArray<HerLast> last, AnimalPlaces places, KindRun[] runs)
{
    /// <summary>Adds it to what the farm promises.</summary>
    /// <param name="promised">Without it.</param>
    /// <param name="animals">How many there are.</param>
    /// <param name="knownDay">The day the records reach.</param>
    public void AddTo(Promised promised, int animals, int knownDay)
    {
        foreach (var ofKind in last.GroupBy(one => one.Kind))
        {
            if (Spans(ofKind, ofKind.Key, animals) is { } spans)
            {
                Add(promised, ofKind.Key, spans, knownDay);
            }
        }
    }

    /// <summary>By animal: the days that are covered; null where none are of anybody. Where two sheets speak of her, what both say; where an entry came after
    /// the one that is called the last, nothing.</summary>
    private (int From, int To)[]? Spans(IEnumerable<HerLast> said, int kind, int animals)
    {
        var spans = new (int From, int To)[animals];
        Array.Fill(spans, (Day.End, Day.Start));
        var isSaid = new bool[animals];
        foreach (var one in said)
        {
            if (places.TryFind(Encoding.UTF8.GetBytes(one.Animal), out var animal))
            {
                var (from, to) = spans[animal];
                spans[animal] = isSaid[animal] ? (Math.Max(from, one.From), Math.Min(to, one.To)) : (one.From, one.To);
                isSaid[animal] = true;
            }
        }

        var any = false;
        for (var animal = 0; animal < animals; animal++)
        {
            var (from, to) = spans[animal];
            foreach (var day in runs[kind].DaysOf(animal))
            {
                isSaid[animal] &= day <= from || day > to;
            }

            spans[animal] = isSaid[animal] && from <= to ? (from, to) : (Day.End, Day.Start);
            any |= spans[animal].From < Day.End;
        }

        return any ? spans : null;
    }

    private static void Add(Promised promised, int kind, (int From, int To)[] spans, int knownDay)
    {
        var others = promised.Since[kind];
        var since = Math.Min(others, spans.Min(span => span.From));
        if (others == Day.End && promised.Reach[kind] < knownDay)
        {
            promised.Holes.Add(new Hole(-1, kind, promised.Reach[kind] + 1, knownDay));
        }

        for (var animal = 0; animal < spans.Length; animal++)
        {
            var (from, to) = spans[animal];
            var first = Math.Min(from, others);
            if (since < first)
            {
                promised.Holes.Add(new Hole(animal, kind, since, first == Day.End ? Day.End : first - 1));
            }

            if (from < others && to + 1 < others && to < knownDay)
            {
                promised.Holes.Add(new Hole(animal, kind, to + 1, Math.Min(others - 1, knownDay)));
            }
        }

        promised.Since[kind] = since;
    }
}
