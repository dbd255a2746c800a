namespace Byrelaw.Judging.Spells;

/// <summary>Days, given as stretches that may overlap.</summary>
internal sealed class DaySet
{
    private readonly int[] _from;
    private readonly int[] _to;

    /// <summary>Puts the stretches together.</summary>
    public DaySet(List<(int From, int To)> stretches)
    {
        stretches.Sort();
        var (from, to) = (new List<int>(), new List<int>());
        foreach (var one in stretches)
        {
            if (to.Count > 0 && one.From <= to[^1] + 1)
            {
                to[^1] = Math.Max(to[^1], one.To);
            }
            else
            {
                from.Add(one.From);
                to.Add(one.To);
            }
        }

        _from = [.. from];
        _to = [.. to];
    }

    /// <summary>Whether there is none.</summary>
    public bool IsEmpty => _from.Length == 0;

    /// <summary>The first day of each stretch, and the day after it.</summary>
    public IEnumerable<int> Edges => _from.Concat(_to.Select(day => day + 1));

    /// <summary>Whether a day is one of them.</summary>
    public bool Holds(int day) => Runs.LastAtMost(_from, 0, _from.Length - 1, day) is var place and >= 0 && _to[place] >= day;
}
