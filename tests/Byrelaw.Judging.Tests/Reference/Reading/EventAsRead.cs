namespace Byrelaw.Judging.Tests.Reference;

/// <summary>Something on record of one animal on one day.</summary>
/// <param name="Animal">Her place.</param>
/// <param name="Kind">What.</param>
/// <param name="Day">When.</param>
/// <param name="Line">Of <c>events.csv</c>.</param>
/// <param name="Values">For a measure: the values that the result allows.</param>
/// <param name="Answer">For a test: the answer's place; -1 where it is not known.</param>
/// <param name="Mob">For a mob move: the mob, folded.</param>
public sealed record Happening(int Animal, Kind Kind, int Day, int Line, ValueRange Values = default, int Answer = -1, string? Mob = null)
{
    /// <summary>A row of a mob or the herd that is each member's.</summary>
    public bool OfGroup { get; init; }

    /// <summary>A sample whose result is blank, pending or not a declared answer.</summary>
    public bool ResultNotKnown => (Kind is MeasureKind && Values.IsAny) || (Kind is TestKind && Answer < 0);
}

/// <summary>A mob's own result: "a mob row of a measure or test is never an animal's own result".</summary>
public sealed record MobResult(string Mob, MeasureKind Measure, int Day, int Line, ValueRange Values)
{
    /// <summary>A detail that would tell whether it is one that a filter means is not known.</summary>
    public bool MayNotBeMeant { get; init; }
}

/// <summary>A result of a mob, or of the herd.</summary>
/// <param name="Mob">Folded; null for the herd.</param>
/// <param name="Result">As if it were some animal's.</param>
public sealed record GroupResult(string? Mob, Happening Result);

/// <summary>An event of a mob, or of the herd.</summary>
/// <param name="Mob">Folded; null for the herd.</param>
/// <param name="Kind">What.</param>
/// <param name="Day">When.</param>
/// <param name="Line">Of <c>events.csv</c>.</param>
/// <param name="Target">For a move: where to, folded.</param>
public sealed record GroupEvent(string? Mob, Kind Kind, int Day, int Line, string? Target);

/// <summary>
/// "A row left out suspends coverage for what can be read of it: that animal and kind; every kind for her if the
/// kind is unreadable; that kind for all if the animal is."
/// </summary>
/// <param name="Animal">Whose it is; null for anyone's.</param>
/// <param name="Kind">What it may be; null for any kind.</param>
/// <param name="Day">When; null for any day.</param>
/// <param name="Line">Of <c>events.csv</c>.</param>
public sealed record Unread(int? Animal, Kind? Kind, int? Day, int Line)
{
    /// <summary>A row that can be read, of a mob: only whose it is nobody can say.</summary>
    public bool OfGroup { get; init; }

    /// <summary>A row that can be read: only a detail of it does not say whether it is one that a filter means.</summary>
    public bool IsOfDetails { get; init; }

    /// <summary>It can be read, and is doubted: too soon after another.</summary>
    public bool IsTooNear { get; init; }

    /// <summary>"An entry on record counts from its own day, whatever the age."</summary>
    public bool IsOnRecord => IsOfDetails || IsTooNear;

    /// <summary>Where the kind cannot be read: the one that its word is spelt like; null for none.</summary>
    public Kind? Like { get; init; }

    /// <summary>It is of a kind, or its word is spelt like that kind's.</summary>
    public bool IsSpeltLike(Kind kind) => (Kind ?? Like)?.Id == kind.Id;

    /// <summary>For a start that is not on record though its end is: the first day on which it may have been; null for any.</summary>
    public int? LostFrom { get; init; }

    /// <summary>The same: the last; null for what is no such start.</summary>
    public int? LostTo { get; init; }

    /// <summary>For what a row of an open sheet would write: the sheet's day.</summary>
    public int? SheetFrom { get; init; }

    /// <summary>The same: today.</summary>
    public int? SheetTo { get; init; }

    /// <summary>It may be hers: nothing happened to her before she was born.</summary>
    public bool MayBeOf(AnimalAsRead animal) => (Animal is null || Animal == animal.Index) && !(Day < animal.BornFirst);

    /// <summary>A row that may be of a kind may be of it with any filter too.</summary>
    public bool MayBeA(Kind kind) => Kind is null || Kind.Id == kind.Id || Kind.Id == kind.Declaration.Id;

    public bool MayBeIn(int from, int to) => from <= to && (LostTo is { } last ? last >= from && !(LostFrom > to) : SheetTo is { } today ? today >= from && SheetFrom <= to : Day is not { } day || (day >= from && day <= to));

    /// <summary>It may have brought her into the herd.</summary>
    public bool MayJoin => Kind is null or EventKind { Effect: HerdEffect.Joins };

    /// <summary>It may have taken her out of the herd.</summary>
    public bool MayLeave => Kind is null or EventKind { Effect: HerdEffect.Leaves };

    /// <summary>It may have brought her into the herd or taken her out.</summary>
    public bool MayJoinOrLeave => Kind is null or EventKind { Effect: not HerdEffect.None };

    /// <summary>It may have moved her to another mob.</summary>
    public bool MayMove => Kind is null or EventKind { IsMobMove: true };
}
