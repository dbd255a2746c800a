namespace Byrelaw.Records.Building;

/// <summary>Gathers gaps. One whose date cannot be right is one on any day.</summary>
internal sealed class GapTable(int knownDay, AnimalRow[] animals)
{
    private readonly List<Gap> _gaps = [];

    /// <summary>All so far.</summary>
    public IReadOnlyList<Gap> Gaps => _gaps;

    /// <summary>Adds some.</summary>
    public void Add(IEnumerable<Gap> gaps)
    {
        foreach (var gap in gaps)
        {
            var isPossible = gap.From <= knownDay && (gap.Animal < 0 || gap.From >= animals[gap.Animal].BornFirst);
            _gaps.Add(isPossible ? gap : gap with { From = Day.Start, To = Day.End });
        }
    }
}
