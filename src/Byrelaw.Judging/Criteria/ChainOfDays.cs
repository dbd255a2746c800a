namespace Byrelaw.Judging.Criteria;

/// <summary>Chains of days in which each is so long after the one before it.</summary>
/// <param name="shortest">The shortest; null for a day.</param>
/// <param name="longest">The longest; null for any.</param>
internal sealed class ChainOfDays(TimeLength? shortest, TimeLength? longest)
{
    private readonly Reckoning _shortest = new(shortest ?? new TimeLength(1, TimeUnit.Days));
    private readonly Reckoning? _longest = longest is { } most ? new Reckoning(most) : null;

    /// <summary>Days of unequal months may leave out a day between the days that two days in a row lead to.</summary>
    private readonly bool _isEven = shortest is not { Unit: TimeUnit.Months or TimeUnit.Years } && longest is not { Unit: TimeUnit.Months or TimeUnit.Years };

    /// <summary>How many days the longest chain has.</summary>
    /// <param name="days">Sorted, each once.</param>
    public int Longest(IReadOnlyList<int> days)
    {
        var (longest, ending) = (0, new int[days.Count]);
        for (var at = 0; at < days.Count; at++)
        {
            ending[at] = 1;
            for (var before = at - 1; before >= 0 && (_longest is null || _longest.After(days[before]) >= days[at]); before--)
            {
                if (_shortest.After(days[before]) <= days[at])
                {
                    ending[at] = Math.Max(ending[at], ending[before] + 1);
                }
            }

            longest = Math.Max(longest, ending[at]);
        }

        return longest;
    }

    /// <summary>Whether some stretches of days hold a chain of so many days: from the days that may be first to those that may be second, and so on.</summary>
    public bool Fits(int count, List<(int From, int To)> stretches)
    {
        var all = Joined(stretches);
        var reached = all;
        for (var link = 1; link < count && reached.Count > 0; link++)
        {
            reached = Shared(all, Joined(reached.SelectMany(Following)));
        }

        return reached.Count > 0;
    }

    /// <summary>The days that may follow those of a stretch in a chain; a day never follows itself.</summary>
    private IEnumerable<(int From, int To)> Following((int From, int To) stretch)
    {
        if (_isEven || stretch.From <= Day.Start)
        {
            yield return Following(stretch.From, stretch.To);
            yield break;
        }

        for (var day = stretch.From; day <= stretch.To; day++)
        {
            yield return Following(day, day);
        }
    }

    private (int From, int To) Following(int from, int to) => (from <= Day.Start ? from : Math.Max(from + 1, _shortest.After(from)), _longest?.After(to) ?? Day.End);

    /// <summary>Sorted, and those that touch as one.</summary>
    private static List<(int From, int To)> Joined(IEnumerable<(int From, int To)> stretches)
    {
        var joined = new List<(int From, int To)>();
        foreach (var (from, to) in stretches.Where(stretch => stretch.From <= stretch.To).Order())
        {
            if (joined.Count > 0 && from <= joined[^1].To + 1L)
            {
                joined[^1] = (joined[^1].From, Math.Max(joined[^1].To, to));
            }
            else
            {
                joined.Add((from, to));
            }
        }

        return joined;
    }

    private static List<(int From, int To)> Shared(List<(int From, int To)> ones, List<(int From, int To)> others)
    {
        var shared = new List<(int From, int To)>();
        for (int one = 0, other = 0; one < ones.Count && other < others.Count;)
        {
            var (from, to) = (Math.Max(ones[one].From, others[other].From), Math.Min(ones[one].To, others[other].To));
            if (from <= to)
            {
                shared.Add((from, to));
            }

            if (ones[one].To < others[other].To)
            {
                one++;
            }
            else
            {
                other++;
            }
        }

        return shared;
    }
}
