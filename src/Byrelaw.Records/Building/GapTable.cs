namespace Byrelaw.Records.Building;

/// <summary>Gathers gaps. One whose date cannot be right is one on any day; one of an animal that may be another is the other's too.</summary>
internal sealed class GapTable(int knownDay, AnimalRow[] animals, Doubles doubles, IReadOnlySet<int> ofSheets)
{
    private readonly List<Gap> _gaps = [];

    /// <summary>All so far.</summary>
    public IReadOnlyList<Gap> Gaps => _gaps;

    /// <summary>Adds some.</summary>
    public void Add(IEnumerable<Gap> gaps)
    {
        foreach (var gap in gaps)
        {
            // A sheet may be of a day that the records do not reach yet: what it would write is of that day on, and what it wrote is of its day.
            var isPossible = gap.IsOfSheet || ofSheets.Contains(gap.Line) || gap.From <= knownDay && (gap.Animal < 0 || gap.To >= animals[gap.Animal].BornFirst);
            var possible = isPossible ? gap : gap with { From = Day.Start, To = Day.End };
            _gaps.Add(possible);
            doubles.Doubt(possible, _gaps);
        }
    }

    /// <summary>Adds some of single animals, of which animals that may be the same have theirs already.</summary>
    public void AddHers(IEnumerable<Gap> gaps) => _gaps.AddRange(gaps);

    /// <summary>Adds what entries of some kinds put in doubt for animals that may be the same.</summary>
    public void AddDoubles(EventStage stage, IEnumerable<int> kinds)
    {
        foreach (var kind in kinds)
        {
            AddDoubles(kind, stage.Events[kind]);
            AddDoubles(kind, stage.Tests[kind]);
            AddDoubles(kind, stage.Measures[kind]);
        }
    }

    /// <summary>Adds what entries of one kind put in doubt for animals that may be the same.</summary>
    public void AddDoubles<TResult>(int kind, ChunkedList<Staged<TResult>> rows)
        where TResult : struct
    {
        if (doubles.Any)
        {
            doubles.Doubt(kind, rows, _gaps);
        }
    }
}
