namespace Byrelaw.Judging.Days;

/// <summary>One animal's days for one kind, and the days after them: what ends on a day still is on that day.</summary>
internal readonly struct DayAfterEdges(HerdDays days, int animal, int kind) : IEdges
{
    public int Next(int day)
    {
        var edge = days.NextEdge(animal, kind, day - 1);
        return edge == day ? day + 1 : edge;
    }
}
