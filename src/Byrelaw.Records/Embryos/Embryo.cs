namespace Byrelaw.Records.Embryos;

/// <summary>How an embryo was made.</summary>
public enum EmbryoMaking
{
    /// <summary>Nobody wrote it down.</summary>
    NotKnown,

    /// <summary>In a laboratory, from eggs that were collected.</summary>
    CollectedEggs,

    /// <summary>In the donor, and flushed out of her.</summary>
    Flush,
}

/// <summary>One embryo, as its row of <c>embryos.csv</c> says that it was made. What became of it is told by events.</summary>
/// <param name="Label">The farm's own name for it, each once.</param>
/// <param name="Line">Its line of the file.</param>
public sealed record Embryo(string Label, int Line)
{
    /// <summary>Eggs that are collected on one day are fertilised on the next: common practice, no source.</summary>
    private const int DaysUntilFertilised = 1;

    /// <summary>How old a flushed embryo is on the day of flushing, and a frozen one where nobody says: common practice, no source.</summary>
    private const int UsualAge = 7;

    /// <summary>What stands on the straw; null where nothing does.</summary>
    public string? Straw { get; init; }

    /// <summary>The genetic dam, an animal of the herd or of <c>pedigree.csv</c>; null where nobody says.</summary>
    public string? Donor { get; init; }

    /// <summary>The bull, likewise.</summary>
    public string? Sire { get; init; }

    /// <summary>How it was made.</summary>
    public EmbryoMaking MadeBy { get; init; }

    /// <summary>The day on which eggs were collected or the donor was flushed; null for a straw that was bought.</summary>
    public LocalDate? Collected { get; init; }

    /// <summary>The day on which it was frozen; null where it was not, or nobody wrote the day down.</summary>
    public LocalDate? FrozenOn { get; init; }

    /// <summary>How many days old it was then; null where nobody says.</summary>
    public int? AgeFrozen { get; init; }

    /// <summary>Stage of development, 1 to 9 (codes of the International Embryo Technology Society); null where nobody says.</summary>
    public int? Stage { get; init; }

    /// <summary>Grade of quality, 1 (best) to 4 (codes of the same society); null where nobody says: that is not a 1.</summary>
    public int? Grade { get; init; }

    /// <summary><c>sexed female</c>, <c>sexed male</c> or <c>unsexed</c>; null where nobody says.</summary>
    public string? Semen { get; init; }

    /// <summary>Its sex where it was tested; else <see cref="Herds.Sex.NotKnown"/>.</summary>
    public Sex Sex { get; init; }

    /// <summary>The calf's breed; null where it lies between those of its parents.</summary>
    public string? Breed { get; init; }

    /// <summary>Whose it is; null where nobody says.</summary>
    public string? Owner { get; init; }

    /// <summary>Whether every cell of its row could be read.</summary>
    public bool IsReadable { get; init; } = true;

    /// <summary>Whether its row says that it was frozen.</summary>
    public bool WasFrozen => FrozenOn is not null || AgeFrozen is not null;

    /// <summary>The first day on which it was to be had; null where no day is on record.</summary>
    public LocalDate? ToBeHadFrom => Collected ?? FrozenOn;

    /// <summary>How many days old it is on a day, thawed where it was frozen; null where nobody can tell.</summary>
    /// <param name="day">Such as the day of transfer.</param>
    /// <param name="frozenOn">The day on which it was frozen, where an event says so.</param>
    public int? AgeOn(LocalDate day, LocalDate? frozenOn = null) =>
        WasFrozen ? AgeFrozen ?? UsualAge
        : Collected is not { } made ? null
        : MadeBy switch
        {
            EmbryoMaking.CollectedEggs => Period.DaysBetween(made, frozenOn ?? day) - DaysUntilFertilised,
            EmbryoMaking.Flush => Period.DaysBetween(made, frozenOn ?? day) + UsualAge,
            _ => null,
        };
}
