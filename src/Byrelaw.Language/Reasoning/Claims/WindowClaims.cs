namespace Byrelaw.Language.Reasoning.Claims;

/// <summary>What it means that something happened, or did not, in a condition's windows.</summary>
internal sealed class WindowClaims(Quantities quantities, Happenings happenings)
{
    /// <summary>The quantity "days since an event that lies in these windows", where that need not be the last.</summary>
    private sealed record InWindowKey(int Kind, int Ago, string Windows);

    /// <summary>Whether every window ends on the day of judging, so that the last event is in them if any is.</summary>
    public static bool EndToday(ImmutableArray<Window> windows) => windows.All(window => window is not (AtLeastAgo or BetweenAgo or BeforeDate or BeforeDay or DaysAfter));

    /// <summary>Whether an event of this kind can lie in the windows: other events of the anchor's own kinds, on or after the last one, are none.</summary>
    public static bool CanHold(ImmutableArray<Window> windows, Kind kind) =>
        !windows.Any(window => window is SinceLast since && since.Kinds.Any(anchor => anchor.Id == kind.Id));

    /// <summary>It happened in the windows.</summary>
    public Claim Some(Happening what, ImmutableArray<Window> windows, Condition from)
    {
        var day = EndToday(windows) ? what.Ago : quantities.Number(
            new InWindowKey(what.Kind, what.Ago, WindowKey.Of(windows)), day => [Bound.Longer(day, what.Ago, default, null)]);
        var some = happenings.Happened(what, from);
        if (day != what.Ago)
        {
            some = some.And(happenings.Happened(what with { Ago = day }, from));
        }

        return Claim.All([new Claim([some]), .. windows.Select(window => Holds(window, day, from))]);
    }

    /// <summary>It did not happen in the windows, as far as that says something about the last one.</summary>
    public Claim None(Happening what, ImmutableArray<Window> windows, Condition from) =>
        EndToday(windows) ? Claim.Any(windows.Select(window => IsBefore(window, what, from))) : Claim.Anything;

    private Claim Holds(Window window, int day, Condition from) => window switch
    {
        InTheLast last => Claim.Of(Bound.Below(day, DaysLong.Of(last.Length), from)),
        AtLeastAgo ago => Claim.Of(Bound.Above(day, DaysLong.Of(ago.Near), from)),
        BetweenAgo ago => Claim.Of(Bound.Above(day, DaysLong.Of(ago.Near), from), Bound.Below(day, DaysLong.Of(ago.Far), from)),
        BeforeDate { Date: var date, Length: var length } => Claim.Of(
            Bound.Longer(day, happenings.Since(date), default, from), Bound.NotLonger(day, happenings.Since(date), DaysLong.Of(length), from)),
        SinceLast since => Claim.Of([.. since.Kinds.Select(kind => Bound.Longer(happenings.Of(kind).Ago, day, default, from))]),
        FromAfterLast after => Claim.Of([.. after.Kinds.Select(kind => Bound.Longer(happenings.Of(kind).Ago, day, DaysLong.Of(after.Wait), from))]),
        SinceDate { Date: var date } => Claim.Of(Bound.Longer(happenings.Since(date), day, default, from)),
        SinceBirth or Ever or FromAfterSpell or BeforeDay or DaysAfter => Claim.Anything,
        _ => throw MissingKind.Of(window, nameof(WindowClaims)),
    };

    /// <summary>The last one was before the window's first day, or there was none.</summary>
    private Claim IsBefore(Window window, Happening what, Condition from) => window switch
    {
        InTheLast last => Claim.Of(Bound.Above(what.Ago, DaysLong.Of(last.Length).Plus(1), from)),
        SinceLast since => Claim.Any(since.Kinds.Select(Anchor).Select(anchor => new Claim(
            [happenings.Happened(anchor, from).And(Together.Of(Bound.Longer(what.Ago, anchor.Ago, new DaysLong(0, happenings.AreOfOneKind(anchor, what) ? 0 : 1), from)))])))
            .Or(new Claim([happenings.Never(what, from)])),
        FromAfterLast after => Claim.Any(after.Kinds.Select(Anchor).Select(anchor => new Claim(
            [happenings.Happened(anchor, from).And(Together.Of(Bound.NotLonger(anchor.Ago, what.Ago, DaysLong.Of(after.Wait).Plus(-1), from)))])))
            .Or(new Claim([happenings.Never(what, from)])),
        SinceDate { Date: var date } => Claim.Of(Bound.Longer(what.Ago, happenings.Since(date), new DaysLong(0, 1), from)),
        FromAfterSpell => Claim.Anything,
        _ => new Claim([happenings.Never(what, from)]),
    };

    private Happening Anchor(Kind kind) => happenings.Of(kind);
}
