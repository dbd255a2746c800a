namespace Byrelaw.Records.Building;

/// <summary>Gaps of certain kinds, for going through the herd animal by animal.</summary>
internal sealed class GapIndex
{
    private static readonly List<Gap> None = [];
    private readonly Gap[] _everyones;
    private readonly Dictionary<int, List<Gap>> _own;
    private readonly Gap? _everyonesAnyDay;
    private readonly Dictionary<int, Gap> _ownAnyDay;
    private readonly bool _isEmpty;

    /// <summary>Takes the gaps whose kind is concerned, or cannot be read.</summary>
    public GapIndex(IEnumerable<Gap> gaps, Func<int, bool> concerns)
    {
        var all = GapOrder.ByFirstDay(gaps.Where(gap => gap.Kind < 0 || concerns(gap.Kind)));
        var dated = all.Where(gap => gap.From > Day.Start).ToArray();
        var undated = all.Where(gap => gap.From <= Day.Start).ToArray();
        _isEmpty = dated.Length == 0;
        _everyones = [.. dated.Where(gap => gap.Animal < 0)];
        _own = dated.Where(gap => gap.Animal >= 0).GroupBy(gap => gap.Animal).ToDictionary(group => group.Key, group => group.ToList());
        _everyonesAnyDay = undated.Where(gap => gap.Animal < 0).Select(gap => (Gap?)gap).FirstOrDefault();
        _ownAnyDay = undated.Where(gap => gap.Animal >= 0).GroupBy(gap => gap.Animal).ToDictionary(group => group.Key, group => group.First());
    }

    /// <summary>A gap that may be this animal's and may be dated on any day; null where there is none.</summary>
    public Gap? OnAnyDay(int animal) => _ownAnyDay.Count > 0 && _ownAnyDay.TryGetValue(animal, out var own) ? own : _everyonesAnyDay;

    /// <summary>The first gap that may be this animal's and is dated in the days from one to the day before the other; null where there is none.</summary>
    public Gap? First(int animal, int from, int before)
    {
        if (_isEmpty)
        {
            return null;
        }

        Gap? first = null;
        foreach (var gap in _own.GetValueOrDefault(animal, None))
        {
            if (gap.From >= from && gap.From < before)
            {
                first = gap;
                break;
            }
        }

        var place = FirstPlace(from);
        return place < _everyones.Length && _everyones[place].From < (first?.From ?? before) ? _everyones[place] : first;
    }

    /// <summary>The last day that a gap which may be this animal's is dated; <see cref="Day.Start"/> where there is none.</summary>
    public int LastDay(int animal)
    {
        var last = _everyones.Length > 0 ? _everyones[^1].From : Day.Start;
        return _own.Count > 0 && _own.TryGetValue(animal, out var own) ? Math.Max(last, own[^1].From) : last;
    }

    private int FirstPlace(int from)
    {
        var (low, high) = (0, _everyones.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (_everyones[middle].From < from)
            {
                low = middle + 1;
            }
            else
            {
                high = middle;
            }
        }

        return low;
    }
}
