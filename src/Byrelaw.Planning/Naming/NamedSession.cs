namespace Byrelaw.Planning.Naming;

/// <summary>One session with those who are named for it.</summary>
/// <param name="Session">Its days and its lists.</param>
/// <param name="Methods">Every method that may be used, the first liked best, and how each animal stands to it.</param>
public sealed record NamedSession(JudgedSession Session, ImmutableArray<MethodChecked> Methods)
{
    /// <summary>Counted from 1.</summary>
    public int Number => Session.Number;

    /// <summary>How many recipients the session wants; null where neither the programme nor its donors say.</summary>
    public int? Wanted { get; init; }

    /// <summary>Those who have a place, by number. Each passes both checks on her own days.</summary>
    public ImmutableArray<NamedAnimal> Named { get; init; } = [];

    /// <summary>Those who would fill places still empty, once what is asked is found out; they are not treated before. By number.</summary>
    public ImmutableArray<NamedAnimal> ToAsk { get; init; } = [];

    /// <summary>Sure animals without a place in any session, the best first; each stands under the first session that she could serve.</summary>
    public ImmutableArray<NamedAnimal> Spares { get; init; } = [];

    /// <summary>The first of the spares, who stand on the sheets with those who begin in case one is left out: three, or one for five; none where nobody begins.</summary>
    public ImmutableArray<NamedAnimal> StandBy => Named.Count(animal => !animal.IsBegun) is var beginning && beginning == 0 ? [] : [.. Spares.Take(Math.Max(3, (beginning + 4) / 5))];

    /// <summary>Those who are watched for a heat of their own, by number. They take no place.</summary>
    public ImmutableArray<NamedAnimal> Watched { get; init; } = [];

    /// <summary>Those who would be watched once what is asked is found out, by number.</summary>
    public ImmutableArray<NamedAnimal> WatchedIfKnown { get; init; } = [];

    /// <summary>Donors that are asked about, each with what is to be found out of her and on which days.</summary>
    public ImmutableArray<NamedAnimal> DonorsToAsk { get; init; } = [];

    /// <summary>Donors of whom something cannot be found out in time.</summary>
    public ImmutableArray<DonorNotInTime> DonorsNotInTime { get; init; } = [];

    /// <summary>Booked, and out by a check: they are not named.</summary>
    public ImmutableArray<BookedAndOut> BookedAndOut { get; init; } = [];

    /// <summary>Begun, and in no number: out by a safety rule since, or with a step that is not on record, or of which nobody wrote for which of several sessions.</summary>
    public ImmutableArray<BegunAnimal> BegunAndNotNamed { get; init; } = [];

    /// <summary>Wanted less named: those to ask never fill it. Null where it is not said how many are wanted.</summary>
    public int? Short => Wanted is { } wanted ? Math.Max(0, wanted - Named.Length) : null;
}

/// <summary>An animal with what is planned of her.</summary>
/// <param name="Animal">Her place in the herd.</param>
/// <param name="Number">Her number on the farm.</param>
/// <param name="Method">How she is made ready.</param>
/// <param name="Start">Day 0; of natural heat the first day of watching.</param>
/// <param name="Points">Of the preferences, in this session.</param>
public sealed record NamedAnimal(int Animal, string Number, string Method, LocalDate Start, double Points)
{
    /// <summary>Whether the book says that she is begun: then her day 0 is her own.</summary>
    public bool IsBegun { get; init; }

    /// <summary>Whether the programme books her.</summary>
    public bool IsBooked { get; init; }

    /// <summary>Of one to ask who keeps her place by a sheet that is not on record yet: that sheet; else null.</summary>
    public OnOpenSheet? OpenSheet { get; init; }

    /// <summary>Of one to ask: what is to be found out of her, and on which days.</summary>
    public ImmutableArray<FindingOut.ToFindOut> ToFindOut { get; init; } = [];

    /// <summary>Earlier sessions that she could serve too, and who has their places.</summary>
    public ImmutableArray<TakenPlaces> Before { get; init; } = [];
}

/// <summary>Who has the places of a session that somebody could have had too.</summary>
/// <param name="Session">Which.</param>
/// <param name="Places">How many are taken.</param>
/// <param name="CannotGoElsewhere">By animals that can serve no other session.</param>
public sealed record TakenPlaces(int Session, int Places, int CannotGoElsewhere);

/// <summary>An animal that is booked and not named.</summary>
/// <param name="Booking">The programme's line.</param>
/// <param name="Failed">What is in the way; <see cref="FailedCheck.None"/> never.</param>
public sealed record BookedAndOut(Booking Booking, FailedCheck Failed);
