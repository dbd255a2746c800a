namespace Byrelaw.Judging.Days;

/// <summary>One window of a condition, made ready to be read for any animal and day.</summary>
internal abstract class WindowReader
{
    /// <summary>What moves the window's first day along with the day of judging; null where it stands still.</summary>
    public Reckoning? LowMoves { get; protected init; }

    /// <summary>What moves the window's last day along with the day of judging; null where it is that day itself or stands still.</summary>
    public Reckoning? HighMoves { get; protected init; }

    /// <summary>The window's last day where it stands still.</summary>
    public int? HighStands { get; protected set; }

    /// <summary>What the window is anchored to; null for most.</summary>
    public Anchor? Anchor { get; protected init; }

    /// <summary>Events of the anchor's own kinds on the anchor's day do not count.</summary>
    public bool SkipsAnchorDay { get; protected init; }

    /// <summary>Reads the window.</summary>
    public abstract WindowReading Read(int animal, int day, ref int until, Notes? notes);

    /// <summary>The window's first day for an anchor on a day.</summary>
    public virtual int LowFrom(int anchor) => anchor;

    /// <summary>The days between which what the window is anchored to may have been later than surely known, both included; null where
    /// its first day is certain.</summary>
    public virtual (int From, int To)? InDoubt(int animal, int day, bool strict) => null;

    /// <summary>Whether, of the days in doubt, it may have been on this one.</summary>
    public virtual bool MayHaveBeen(int animal, int day, bool strict) => false;

    /// <summary>The first day after another on which that may change.</summary>
    public virtual int NextTurn(int animal, int day) => int.MaxValue;

    /// <summary>The first day of an anchor for which the window's first day reaches another; that far off where none does.</summary>
    public virtual int AnchorReaching(int low) => low;
}

/// <summary>One window for one animal on one day.</summary>
/// <param name="Bounds">Its days.</param>
/// <param name="FromBirth">It is anchored to something that never happened, so it runs from birth.</param>
/// <param name="IsKnown">False where it is anchored to something of which nothing is known.</param>
/// <param name="IsStrictlyKnown">The same with coverage stopping at the known day.</param>
internal readonly record struct WindowReading(Bounds Bounds, bool FromBirth, bool IsKnown, bool IsStrictlyKnown);

/// <summary>A window whose first day moves, stands, or is before all.</summary>
internal sealed class PlainWindow : WindowReader
{
    private readonly int _low;

    /// <param name="low">A standing first day; <see cref="Day.Start"/> for none.</param>
    /// <param name="lowMoves">Or what moves it.</param>
    /// <param name="highMoves">What moves the last day; null for the day of judging.</param>
    /// <param name="highStands">A standing last day.</param>
    public PlainWindow(int low = Day.Start, Reckoning? lowMoves = null, Reckoning? highMoves = null, int? highStands = null)
    {
        _low = low;
        LowMoves = lowMoves;
        HighMoves = highMoves;
        HighStands = highStands;
    }

    /// <summary>The first day where it stands; <see cref="Day.Start"/> for none.</summary>
    public int Low => _low;

    public override WindowReading Read(int animal, int day, ref int until, Notes? notes)
    {
        var low = LowMoves?.FirstReaching(day) ?? _low;
        var high = HighMoves is null ? day : Math.Min(day, HighMoves.LastWithin(day));
        return new WindowReading(
            new Bounds(low, low, low, HighStands is { } stands ? Math.Min(high, stands) : high), false, true, true);
    }
}

/// <summary><c>since birth</c>, from the first day that it may have been; from before all where it is not known.</summary>
internal sealed class BirthWindow(HerdDays days) : WindowReader
{
    public override WindowReading Read(int animal, int day, ref int until, Notes? notes)
    {
        var born = days.Herd.BornEarliest[animal];
        return new WindowReading(new Bounds(born, born, born, day), true, true, true);
    }
}

/// <summary><c>since last X</c> and <c>from N after last X</c>.</summary>
internal sealed class AnchoredWindow : WindowReader
{
    private readonly Reckoning? _wait;

    public AnchoredWindow(Anchor anchor, Reckoning? wait)
    {
        Anchor = anchor;
        _wait = wait;
        SkipsAnchorDay = wait is null;
    }

    public override (int From, int To)? InDoubt(int animal, int day, bool strict)
    {
        var until = int.MaxValue;
        var reading = Anchor!.Read(animal, day, ref until, null);
        return reading.State == AnchorState.Recorded ? (reading.Last + 1, strict ? reading.StrictLatest : reading.Latest) : null;
    }

    public override bool MayHaveBeen(int animal, int day, bool strict) => Anchor!.MayHaveHappened(animal, day, day, strict);

    public override int NextTurn(int animal, int day) => Anchor!.NextTurn(animal, day);

    public override int LowFrom(int anchor) => _wait is null ? anchor : _wait.After(anchor);

    public override int AnchorReaching(int low) => _wait is null || low >= Day.End ? low : _wait.FirstReaching(low);

    public override WindowReading Read(int animal, int day, ref int until, Notes? notes)
    {
        var reading = Anchor!.Read(animal, day, ref until, notes);
        var fromBirth = reading.State == AnchorState.Never;
        var bounds = fromBirth
            ? new Bounds(reading.Last, reading.Last, reading.Last, day)
            : new Bounds(LowFrom(reading.Last), LowFrom(reading.Latest), LowFrom(reading.StrictLatest), day);
        return new WindowReading(bounds, fromBirth, reading.State != AnchorState.NotKnown, reading.StrictState != AnchorState.NotKnown);
    }
}
