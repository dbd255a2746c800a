namespace Byrelaw.Judging.Days;

/// <summary>The days that windows hold for one animal on one day of judging.</summary>
/// <param name="Low">The first, for the earliest day her anchor may have been.</param>
/// <param name="Latest">The first, for the latest day her anchor may have been; equal to <paramref name="Low"/> where that is certain.</param>
/// <param name="StrictLatest">The same with coverage stopping at the known day.</param>
/// <param name="High">The last, never after the day of judging.</param>
internal readonly record struct Bounds(int Low, int Latest, int StrictLatest, int High)
{
    /// <summary>All days up to one.</summary>
    public static Bounds UpTo(int high) => new(Day.Start, Day.Start, Day.Start, high);

    /// <summary>By how many days the first day her anchor may have been is earlier with coverage stopping at the known day: while a spell runs
    /// past that, it may have ended on it.</summary>
    public int StrictlyEarlier { get; init; }

    /// <summary>The first, for the earliest day her anchor may have been, with coverage stopping at the known day.</summary>
    public int StrictLow => Low - StrictlyEarlier;

    public bool IsCertain => Low == Latest;

    public bool IsStrictlyCertain => Low == StrictLatest && StrictlyEarlier == 0;

    /// <summary>The same days with the first of them certain.</summary>
    public Bounds From(int low) => new(low, low, low, High);

    /// <summary>The same days with the first of them one later: without the anchor's own day.</summary>
    public Bounds WithoutFirst() => this with { Low = Low + 1, Latest = Latest + 1, StrictLatest = StrictLatest + 1 };

    public Bounds And(Bounds other) => new(
        Math.Max(Low, other.Low), Math.Max(Latest, other.Latest), Math.Max(StrictLatest, other.StrictLatest), Math.Min(High, other.High))
    {
        StrictlyEarlier = Math.Max(Low, other.Low) - Math.Max(StrictLow, other.StrictLow),
    };
}
