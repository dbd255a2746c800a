namespace Byrelaw.Planning.Sheets;

/// <summary>A morning on which something is found out of animals that are asked about: in the yards, or through a laboratory.</summary>
public sealed record FindingSheet(LocalDate Date, NamedSession Session, InCalfOnDay InCalf, LocalDate? RecordsEnd, bool InTheYards) : MorningSheet(Date, Session, InCalf, RecordsEnd)
{
    /// <summary>Animals, each with all that is found out of her that morning.</summary>
    public ImmutableArray<FindingRow> Rows { get; init; } = [];

    /// <inheritdoc/>
    public override SheetWork Work => InTheYards ? SheetWork.Scans : SheetWork.Samples;

    /// <inheritdoc/>
    public override int Animals => Rows.Length;
}

/// <summary>One animal on such a morning.</summary>
/// <param name="Who">She.</param>
/// <param name="Records">What is found out, each on days of its own that hold the morning.</param>
public sealed record FindingRow(SheetAnimal Who, ImmutableArray<WorkToDo> Records)
{
    /// <summary>How she would be made ready; empty for a donor.</summary>
    public string Method { get; init; } = "";

    /// <summary>Whether she is only watched for a heat of her own, and takes no place.</summary>
    public bool IsWatched { get; init; }
}

/// <summary>One thing to find out of an animal.</summary>
/// <param name="Kind">The measure or test.</param>
/// <param name="Days">The days on which it does what it is for, in runs.</param>
/// <param name="MoreOfTheMob">Where her mob lacks results: how many more animals of it; else 0.</param>
public sealed record WorkToDo(Kind Kind, ImmutableArray<DateInterval> Days, int MoreOfTheMob)
{
    /// <summary>From this day on it is not spoilt by a transfer that slips by a few days.</summary>
    public LocalDate Steady { get; init; }

    /// <summary>Who waits for its result too, session by session.</summary>
    public ImmutableArray<FindingOut.WaitsForIt> Waiting { get; init; } = [];

    /// <summary>Whether a day is one of them.</summary>
    public bool Holds(LocalDate day) => Days.Any(run => run.Start <= day && day <= run.End);

    /// <summary>The last of them.</summary>
    public LocalDate Last => Days[^1].End;
}
