namespace Byrelaw.Planning.FindingOut;

/// <summary>
/// Finds on which of some days something is so, from as few trials as do: the days at which it may change, one a fortnight, and between two that differ the edge. Days between
/// two of a fortnight that are alike are taken to be so too.
/// </summary>
internal sealed class DaySearch
{
    private const int Fortnight = 14;

    private readonly SortedDictionary<LocalDate, bool> _known = [];
    private readonly Queue<LocalDate> _next;

    /// <param name="first">The first day.</param>
    /// <param name="last">The last.</param>
    /// <param name="edges">Days at which it may change.</param>
    public DaySearch(LocalDate first, LocalDate last, IEnumerable<LocalDate> edges) => _next = new(
        DayRuns.From(first, last).Where((day, i) => i % Fortnight == 0 || day == last)
            .Concat(edges.SelectMany(edge => new[] { edge.PlusDays(-1), edge, edge.PlusDays(1) }).Where(day => day >= first && day <= last)).Distinct());

    /// <summary>The next day to try; null where all is known.</summary>
    public LocalDate? Next()
    {
        if (_next.TryDequeue(out var day))
        {
            return day;
        }

        var before = default(KeyValuePair<LocalDate, bool>?);
        foreach (var one in _known)
        {
            if (before is { } last && last.Value != one.Value && Period.DaysBetween(last.Key, one.Key) is > 1 and var gap)
            {
                return last.Key.PlusDays(gap / 2);
            }

            before = one;
        }

        return null;
    }

    /// <summary>What came of a trial.</summary>
    public void Found(LocalDate day, bool isSo) => _known[day] = isSo;

    /// <summary>The runs of days on which it is so.</summary>
    public ImmutableArray<DateInterval> Runs()
    {
        var runs = ImmutableArray.CreateBuilder<DateInterval>();
        LocalDate? from = null, to = null;
        foreach (var (day, isSo) in _known)
        {
            if (isSo)
            {
                (from, to) = (from ?? day, day);
            }
            else if (from is { } first)
            {
                runs.Add(new DateInterval(first, to!.Value));
                from = null;
            }
        }

        if (from is { } open)
        {
            runs.Add(new DateInterval(open, to!.Value));
        }

        return runs.ToImmutable();
    }
}
