namespace Byrelaw.Judging.Spells;

/// <summary>Days on which an animal may have been in a spell whose end is on record, or may be, and whose start is not.</summary>
internal sealed class LostStartDays(Herd herd, Spell spell)
{
    private static readonly Gap[] None = [];

    // By animal, in order; they never overlap.
    private readonly Dictionary<int, Gap[]> _lost = herd.Coverage.Gaps.Where(gap => gap.IsLostStart && gap.Kind == spell.From.Id)
        .GroupBy(gap => gap.Animal).ToDictionary(gaps => gaps.Key, gaps => gaps.ToArray());

    /// <summary>The last such day from one to another; int.MinValue for none.</summary>
    public int Last(int animal, int from, int to)
    {
        var last = int.MinValue;
        foreach (var gap in Of(animal))
        {
            last = gap.From <= to && gap.To >= from && from <= to ? Math.Max(last, Math.Min(gap.To, to)) : last;
        }

        return last;
    }

    /// <summary>The first day of the stretch that a day is in.</summary>
    public int First(int animal, int day) => Array.Find(Of(animal), gap => gap.From <= day && gap.To >= day).From;

    /// <summary>The first day after another on which one begins or is over; int.MaxValue for none.</summary>
    public int NextEdge(int animal, int day)
    {
        var next = int.MaxValue;
        foreach (var gap in Of(animal))
        {
            next = gap.From > day ? Math.Min(next, gap.From) : gap.To >= day ? Math.Min(next, gap.To + 1) : next;
        }

        return next;
    }

    private Gap[] Of(int animal) => _lost.Count > 0 && _lost.TryGetValue(animal, out var lost) ? lost : None;
}

/// <summary>The days on which such stretches of one animal begin, and are over.</summary>
internal readonly struct LostStartEdges(LostStartDays lost, int animal) : IEdges
{
    public int Next(int day) => lost.NextEdge(animal, day);
}
