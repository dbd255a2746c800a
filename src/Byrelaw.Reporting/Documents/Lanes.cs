namespace Byrelaw.Reporting.Documents;

/// <summary>What happened and will, a lane for each kind, on one axis. Each lane says in words what it draws.</summary>
/// <param name="Axis">The days.</param>
/// <param name="All">Top to bottom.</param>
public sealed record Lanes(YearAxis Axis, ImmutableArray<Lane> All) : Drawn
{
    /// <inheritdoc/>
    public override IEnumerable<Element> InWords() => [new Listing([.. All.Select<Lane, Wording>(lane => $"{Wording.Bold(lane.Name)} {lane.Says}")], IsNumbered: false)];
}

/// <summary>One lane.</summary>
/// <param name="Name">The kind.</param>
/// <param name="Says">Its days in words.</param>
/// <param name="Marks">Its days drawn.</param>
public sealed record Lane(string Name, Wording Says, ImmutableArray<DayMark> Marks);
