namespace Byrelaw.Judging.Days;

/// <summary>The days that one window holds for one animal on one day of judging.</summary>
/// <param name="Low">The first, for the earliest day her anchor may have been.</param>
/// <param name="LowLatest">The first, for the latest day her anchor may have been; else equal to <paramref name="Low"/>.</param>
/// <param name="High">The last, never after the day of judging.</param>
internal readonly record struct Bounds(int Low, int LowLatest, int High)
{
    public static readonly Bounds All = new(Records.Herds.Day.Start, Records.Herds.Day.Start, Records.Herds.Day.End);

    public bool IsCertain => Low == LowLatest;

    public Bounds And(Bounds other) => new(
        Math.Max(Low, other.Low), Math.Max(LowLatest, other.LowLatest), Math.Min(High, other.High));
}
