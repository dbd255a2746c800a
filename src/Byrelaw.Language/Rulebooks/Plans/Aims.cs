namespace Byrelaw.Language.Rulebooks.Plans;

/// <summary>What a programme is for, and the choices its plan is made from.</summary>
public sealed record Aims
{
    /// <summary>Where the embryos come from.</summary>
    public EmbryoOrigin Embryos { get; init; }

    /// <summary>Embryos in the tank before the programme starts.</summary>
    public int InTheTank { get; init; }

    /// <summary>Whether these were made with sexed semen.</summary>
    public bool TankIsSexed { get; init; }

    /// <summary>Days from heat to frozen for embryos in the tank, and to transfer for flushed ones.</summary>
    public int EmbryoAge { get; init; } = 7;

    /// <summary>What is wanted; null where the programme does not say.</summary>
    public Want? Wants { get; init; }

    /// <summary>What may be spent; null where the programme does not say.</summary>
    public Money? Budget { get; init; }

    /// <summary>Whose money it is, in the order of writing; empty where nothing is said.</summary>
    public ImmutableArray<CostsShared> Shared { get; init; } = [];

    /// <summary>Who agreed to the aims.</summary>
    public Agreement? Agreement { get; init; }

    /// <summary>The collections (or flushes) in order; empty without any, or where a visit is still to be chosen.</summary>
    public ImmutableArray<LocalDate> Collections { get; init; } = [];

    /// <summary>The first collection is on a visit still to be chosen; null where its day is set.</summary>
    public VisitWindow? OnAVisit { get; init; }

    /// <summary>How many times, and how far apart, where several follow from the first.</summary>
    public Repeat? Repeat { get; init; }

    /// <summary>Recipients take an embryo this many days after their heat, from.</summary>
    public int RecipientDayFrom { get; init; } = 6;

    /// <summary>And to.</summary>
    public int RecipientDayTo { get; init; } = 8;

    /// <summary>And her day is no further than so many days from the embryo's age.</summary>
    public int WithinDaysOfEmbryo { get; init; } = UsualWithinDays;

    /// <summary>What holds where nothing is said.</summary>
    public const int UsualWithinDays = 1;

    /// <summary>Animals that are booked for a session, in the order of writing. A booking says who is meant, and opens no gate.</summary>
    public ImmutableArray<Booking> Bookings { get; init; } = [];

    /// <summary>
    /// Days since heat (or fertilisation) of an embryo that is transferred on a day. Eggs are fertilised on the day after their collection
    /// (collection is day -1, and blastocysts are looked for on day 7: Reproduction, Fertility and Development 31:140), so on the eighth day after it
    /// they are seven days old.
    /// </summary>
    /// <param name="transfer">The day.</param>
    /// <param name="collection">The day of collection or flush; null for frozen embryos.</param>
    public int EmbryoAgeOn(LocalDate transfer, LocalDate? collection) => (Embryos, collection) switch
    {
        (EmbryoOrigin.CollectedEggs, { } day) => Period.DaysBetween(day, transfer) - 1,
        (EmbryoOrigin.Flushed, { } flush) => EmbryoAge + Period.DaysBetween(flush, transfer),
        _ => EmbryoAge,
    };

    /// <summary>The methods that may be used for recipients, the one liked best first: those the programme names, else all.</summary>
    /// <param name="plans">All methods.</param>
    public ImmutableArray<Method> MethodsOf(PlanStatements plans)
    {
        ArgumentNullException.ThrowIfNull(plans);
        return Recipients.IsEmpty ? [.. plans.Methods.Where(method => !method.IsForDonors)] : [.. Recipients.Select(one => plans.Method(one.Method)).OfType<Method>()];
    }

    /// <summary>How many sessions the programme has: one for each collection.</summary>
    public int Sessions => OnAVisit is not null ? Repeat?.Times ?? 1 : Math.Max(Collections.Length, 1);

    /// <summary>How recipients are got ready: methods that may be used, the first liked best; empty for any.</summary>
    public ImmutableArray<Preparation> Recipients { get; init; } = [];

    /// <summary>How donors are got ready for a flush; null where they are not treated.</summary>
    public string? DonorMethod { get; init; }

    /// <summary>The semen used.</summary>
    public Semen Semen { get; init; }

    /// <summary>The calves' breeds; several for a cross, which stands between them.</summary>
    public ImmutableArray<string> CalfBreeds { get; init; } = [];

    /// <summary>The region whose visits count; null for visits everywhere.</summary>
    public string? Region { get; init; }

    /// <summary>The last acceptable day of calving; null for none.</summary>
    public LocalDate? CalveBy { get; init; }

    /// <summary>Public holidays, from the list that the programme names.</summary>
    public ImmutableArray<Holiday> Holidays { get; init; } = [];

    /// <summary>The holiday list's path as written; null for none.</summary>
    public string? HolidayFile { get; init; }
}

/// <summary>Where a programme's embryos come from.</summary>
public enum EmbryoOrigin
{
    /// <summary>Made in the laboratory from eggs collected on the day of collection.</summary>
    CollectedEggs,

    /// <summary>Flushed from donors on the day of collection.</summary>
    Flushed,

    /// <summary>From the tank; nothing is collected.</summary>
    Frozen,
}

/// <summary>What is counted at the end.</summary>
public enum Outcome
{
    /// <summary>Live heifer calves.</summary>
    LiveHeiferCalves,

    /// <summary>Live calves.</summary>
    LiveCalves,

    /// <summary>Pregnancies at the first check.</summary>
    Pregnancies,

    /// <summary>Embryos put into recipients.</summary>
    EmbryosTransferred,
}

/// <summary>Semen.</summary>
public enum Semen
{
    /// <summary>As it comes.</summary>
    Unsexed,

    /// <summary>Sexed for heifer calves.</summary>
    SexedFemale,

    /// <summary>Sexed for bull calves.</summary>
    SexedMale,
}

/// <summary><c>wants 6 live heifer calves, 80% sure</c>.</summary>
/// <param name="Count">At least so many.</param>
/// <param name="What">Of what.</param>
/// <param name="Sure">With this probability, above 0 and below 1.</param>
/// <param name="Span">Where.</param>
public sealed record Want(int Count, Outcome What, double Sure, SourceSpan Span);

/// <summary><c>on a visit between A and B</c>, both included.</summary>
public sealed record VisitWindow(LocalDate From, LocalDate To, SourceSpan Span);

/// <summary><c>3 times every 14 days</c>.</summary>
public sealed record Repeat(int Times, TimeLength Every);

/// <summary><c>prepare "1031" by "Progesterone insert" for session 2</c>.</summary>
/// <param name="Animal">Her number on the farm.</param>
/// <param name="Method">The method's name.</param>
/// <param name="Session">Which session, from 1.</param>
/// <param name="Span">Her number.</param>
public sealed record Booking(string Animal, string Method, int Session, SourceSpan Span);

/// <summary><c>prepare 24 recipients by "Progesterone insert"</c>.</summary>
/// <param name="Method">The method's name.</param>
/// <param name="Count">How many animals; null where the plan is to say.</param>
/// <param name="Span">Where.</param>
public sealed record Preparation(string Method, int? Count, SourceSpan Span);
