namespace Byrelaw.Judging.Days;

/// <summary>The windows of one condition, none to two; an event must lie in all of them.</summary>
internal sealed class WindowSet
{
    private readonly HerdDays _days;
    private readonly WindowReader[] _windows;

    public WindowSet(HerdDays days, WindowReader[] windows)
    {
        _days = days;
        _windows = windows;
        AnyHighStands = Array.Exists(windows, window => window.HighStands is not null);
        Only = windows.Length == 1 && windows[0].HighMoves is null && windows[0].HighStands is null ? windows[0] : null;
    }

    /// <summary>The only window, where it ends on the day of judging: by far the commonest, and the quickest to follow.</summary>
    public WindowReader? Only { get; }

    /// <summary>The only window, where its first day moves or stands, and its last is the day of judging or lags behind it.</summary>
    public PlainWindow? OnlyPlain => _windows is [PlainWindow { HighStands: null } plain] ? plain : null;

    /// <summary>Whether the last day of some window stands, so that the day of judging passes it.</summary>
    public bool AnyHighStands { get; }

    /// <summary>A set's reading for one animal and day: each window on its own, for up to two.</summary>
    public readonly record struct Reading(WindowReading First, WindowReading Second)
    {
        public bool IsKnown => First.IsKnown && Second.IsKnown;

        public bool IsStrictlyKnown => First.IsStrictlyKnown && Second.IsStrictlyKnown;

        /// <summary>The days of all windows together, for a kind that no window is anchored to by itself.</summary>
        public Bounds Together => First.Bounds.And(Second.Bounds);
    }

    /// <summary>Reads all windows.</summary>
    public Reading Read(int animal, int day, ref int until, Notes? notes)
    {
        var open = new WindowReading(Bounds.UpTo(day), false, true, true);
        return new Reading(
            _windows.Length > 0 ? _windows[0].Read(animal, day, ref until, notes) : open,
            _windows.Length > 1 ? _windows[1].Read(animal, day, ref until, notes) : open);
    }

    /// <summary>The days that count for one kind: all windows together, less the anchor's own day for the anchor's own kinds.</summary>
    public Bounds For(int kind, in Reading reading)
    {
        if (_windows.Length == 0)
        {
            return reading.First.Bounds;
        }

        var bounds = Own(_windows[0], kind, reading.First);
        return _windows.Length > 1 ? bounds.And(Own(_windows[1], kind, reading.Second)) : bounds;
    }

    /// <summary>The readings that the windows may have, for answers that do not move one way with the window: of those that nothing
    /// tells apart, one.</summary>
    /// <param name="animal">Whose.</param>
    /// <param name="day">The day of judging.</param>
    /// <param name="strict">Coverage stops at the known day.</param>
    /// <param name="reading">How they read.</param>
    /// <param name="edges">The days that differ, for what is looked for in the windows.</param>
    public List<Reading> Possible<TEdges>(int animal, int day, bool strict, Reading reading, TEdges edges)
        where TEdges : struct, IEdges =>
        _windows.Length == 0
            ? [reading]
            : new PossibleDays(_days, animal, strict).Pairs(_windows[0], _windows.Length > 1 ? _windows[1] : null, reading, day, edges).ConvertAll(lows => new Reading(
                reading.First with { Bounds = reading.First.Bounds.From(lows.First) },
                reading.Second with { Bounds = reading.Second.Bounds.From(lows.Second) }));

    /// <summary>
    /// Lowers <paramref name="until"/> to the last day through which the windows, moving with the day of
    /// judging, meet no day that differs for this kind from the one before it.
    /// </summary>
    public void Limit(int animal, int day, int kind, in Reading reading, ref int until)
    {
        LimitBy(new OwnEdges(_days, animal, kind), day, reading, ref until);
        var own = For(kind, reading);
        if (own.High < own.Low && own.High == day)
        {
            until = Math.Min(until, own.Low - 1);
        }
    }

    /// <summary>The same where the days that differ are not her own.</summary>
    public void LimitBy<TEdges>(TEdges edges, int day, in Reading reading, ref int until)
        where TEdges : struct, IEdges
    {
        until = Math.Min(until, edges.Next(day) - 1);
        for (var i = 0; i < _windows.Length; i++)
        {
            var window = _windows[i];
            var bounds = i == 0 ? reading.First.Bounds : reading.Second.Bounds;
            if (window.LowMoves is { } low)
            {
                until = Math.Min(until, low.After(edges.Next(bounds.Low) - 1));
            }

            if (window.HighMoves is { } high)
            {
                until = Math.Min(until, high.After(edges.Next(bounds.High)) - 1);
            }
        }

        LimitByEmptiness(day, reading, ref until);
        LimitByKnownDay(reading.Together.High, ref until);
    }

    private static Bounds Own(WindowReader window, int kind, in WindowReading reading) =>
        window.SkipsAnchorDay && !reading.FromBirth && window.Anchor!.Has(kind) ? reading.Bounds.WithoutFirst() : reading.Bounds;

    /// <summary>A window that holds no day at all is covered; it must not silently become one that holds some, or the other way round.</summary>
    private void LimitByEmptiness(int day, in Reading reading, ref int until)
    {
        var together = reading.Together;
        var isEmpty = together.High < together.Low;
        for (var i = 0; i < _windows.Length; i++)
        {
            var window = _windows[i];
            var bounds = i == 0 ? reading.First.Bounds : reading.Second.Bounds;
            // A last day that stands is the day of judging until that reaches it.
            if (isEmpty && bounds.High < together.Low && (window.HighStands is not { } stands || bounds.High < stands))
            {
                until = Math.Min(until, window.HighMoves is { } high ? high.After(together.Low) - 1 : together.Low - 1);
            }
            else if (!isEmpty && window.LowMoves is { } low && (window.HighStands is not null || _windows.Length > 1 || window.HighMoves is not null))
            {
                // The last day stands and the first moves past it, or both move and months of unequal
                // length may let them cross: then go day by day.
                until = Math.Min(until, AnyHighMoves && together.High - together.Low < 8 ? day : low.After(together.High));
            }
        }
    }

    /// <summary>A last day that lags behind the day of judging passes the known day later than that does.</summary>
    private void LimitByKnownDay(int high, ref int until)
    {
        if (high > _days.KnownDay)
        {
            return;
        }

        foreach (var window in _windows)
        {
            if (window.HighMoves is { } moves)
            {
                until = Math.Min(until, Math.Max(moves.After(_days.KnownDay + 1) - 1, 0));
            }
        }
    }

    private bool AnyHighMoves => _windows.Any(window => window.HighMoves is not null);
}
