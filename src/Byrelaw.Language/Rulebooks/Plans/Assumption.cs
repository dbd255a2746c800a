namespace Byrelaw.Language.Rulebooks.Plans;

/// <summary>What a plan rests on, other than money.</summary>
public enum AssumedQuantity
{
    /// <summary>Eggs from one donor at one collection.</summary>
    OocytesPerCollection,

    /// <summary>Embryos fit to transfer from one donor at one flush.</summary>
    EmbryosPerFlush,

    /// <summary>Share of eggs that become embryos fit to transfer.</summary>
    EmbryosPerOocyte,

    /// <summary>Share of embryos good enough to freeze.</summary>
    EmbryosFitToFreeze,

    /// <summary>Share of recipients that cycle.</summary>
    RecipientsCycling,

    /// <summary>Share of transfers that are pregnant at the first check.</summary>
    PregnantPerTransfer,

    /// <summary>Share of pregnancies at the first check that are still there at the second check, about day 60.</summary>
    KeptFromFirstToSecondCheck,

    /// <summary>Share of pregnancies at the second check that calve.</summary>
    KeptFromSecondCheckToCalving,

    /// <summary>Share of pregnancies at the first check that calve.</summary>
    KeptFromFirstCheckToCalving,

    /// <summary>Share of calves alive a day after birth.</summary>
    AliveAtADayOld,

    /// <summary>Share of calves that are heifers.</summary>
    HeiferPerCalf,

    /// <summary>Days from heat to calving.</summary>
    Gestation,

    /// <summary>Days for which a recipient is kept on the programme's account.</summary>
    DaysOfKeepPerRecipient,

    /// <summary>Share of the animals to ask about that turn out to be usable.</summary>
    AskedAndUsable,
}

/// <summary>Whether an embryo was ever frozen.</summary>
public enum EmbryoState
{
    /// <summary>Transferred as made.</summary>
    Fresh,

    /// <summary>Frozen and thawed.</summary>
    Frozen,
}

/// <summary>Sorts of recipients that a rate may be told apart for.</summary>
public enum Carrier
{
    /// <summary>All cows; beside <see cref="DryCows"/> those in milk.</summary>
    Cows,

    /// <summary>Cows dried off since their last calving, or bought dry.</summary>
    DryCows,

    /// <summary>Heifers.</summary>
    Heifers,
}

/// <summary>One line of what a plan rests on: a share, or a number with its spread.</summary>
public sealed record Assumption
{
    /// <summary>Of what.</summary>
    public required AssumedQuantity Quantity { get; init; }

    /// <summary>Only for fresh or for frozen embryos; null for both.</summary>
    public EmbryoState? State { get; init; }

    /// <summary>Only in recipients of this sort; null for all.</summary>
    public Carrier? In { get; init; }

    /// <summary>Only with sexed semen.</summary>
    public bool WithSexedSemen { get; init; }

    /// <summary>Only for calves of this breed; null for all.</summary>
    public string? Breed { get; init; }

    /// <summary>Only of this donor, by her number on the farm; null for all.</summary>
    public string? Donor { get; init; }

    /// <summary>The share; null for a number.</summary>
    public Share? Share { get; init; }

    /// <summary>The number (mean); null for a share.</summary>
    public double? Mean { get; init; }

    /// <summary>Standard deviation of the number; null where it does not vary.</summary>
    public double? Spread { get; init; }

    /// <summary>How many collections or flushes one would have to watch to be as sure of the number; null where it is taken as exact.</summary>
    public double? Weight { get; init; }

    /// <summary>The reason.</summary>
    public string? Because { get; init; }

    /// <summary>Where it comes from.</summary>
    public string? Source { get; init; }

    /// <summary>Who agreed.</summary>
    public Agreement? Agreement { get; init; }

    /// <summary>From a used file, or the programme's own.</summary>
    public Basis Basis { get; init; }

    /// <summary>Where it is written.</summary>
    public required SourceSpan Span { get; init; }
}
