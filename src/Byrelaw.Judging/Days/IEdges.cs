namespace Byrelaw.Judging.Days;

/// <summary>Days that differ, for some condition, from the days before them.</summary>
internal interface IEdges
{
    /// <summary>The first such day after <paramref name="day"/>; int.MaxValue for none.</summary>
    int Next(int day);
}

/// <summary>One animal's days for several kinds.</summary>
internal readonly struct KindsEdges(HerdDays days, int animal, int[] kinds) : IEdges
{
    public int Next(int day)
    {
        var next = int.MaxValue;
        foreach (var kind in kinds)
        {
            next = Math.Min(next, days.NextEdge(animal, kind, day));
        }

        return next;
    }
}

/// <summary>One animal's days for one kind.</summary>
internal readonly struct OwnEdges(HerdDays days, int animal, int kind) : IEdges
{
    public int Next(int day) => days.NextEdge(animal, kind, day);
}
