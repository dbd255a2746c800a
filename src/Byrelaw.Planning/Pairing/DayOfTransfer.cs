using Byrelaw.Planning.Sheets;

namespace Byrelaw.Planning.Pairing;

/// <summary>A day of transfer: which embryo into which recipient, who waits, what is left over, and why the others are not used.</summary>
/// <param name="Session">Its session.</param>
/// <param name="Day">The day.</param>
/// <param name="Draft">The rules on the session's days, and the records.</param>
/// <param name="InCalf">Whom to take as in calf that morning, and who may be.</param>
public sealed record DayOfTransfer(Session Session, LocalDate Day, Draft Draft, InCalfOnDay InCalf)
{
    /// <summary>Kinds of record of which not all is written down up to the day: then nobody is paired.</summary>
    public ImmutableArray<ShortKind> Short { get; init; } = [];

    /// <summary>Whether a rule of the list could not be read: then nobody is paired.</summary>
    public bool IsBroken { get; init; }

    /// <summary>The pairs, by the recipients' numbers.</summary>
    public ImmutableArray<Pair> Pairs { get; init; } = [];

    /// <summary>Who may be given an embryo and is not paired, the best first.</summary>
    public ImmutableArray<Recipient> Waiting { get; init; } = [];

    /// <summary>Embryos that are to be had and are not paired, by label.</summary>
    public ImmutableArray<LeftOver> LeftOver { get; init; } = [];

    /// <summary>Those whose heat fits the day and who are not used.</summary>
    public ImmutableArray<NotToday> Out { get; init; } = [];

    /// <summary>Every embryo that is to be had that day, paired or not.</summary>
    public ImmutableArray<EmbryoToday> Embryos { get; init; } = [];

    /// <summary>Whether the programme's rates lead as far as what it wants: else pairs go by fit and points alone.</summary>
    public bool HasRates { get; init; }

    /// <summary>What the programme wants.</summary>
    public Stage Goal { get; init; }

    /// <summary>Who would have an embryo if its recipient is rejected: the first waiting whom it fits; null for none.</summary>
    public Recipient? Instead(Pair pair)
    {
        ArgumentNullException.ThrowIfNull(pair);
        var within = Draft.Rulebook.Programme!.Aims.WithinDaysOfEmbryo;
        return Waiting.FirstOrDefault(waiting => PairRule.Common.All(rule => rule.Of(pair.Embryo, waiting.Day, within) == Truth.True));
    }
}

/// <summary>An embryo and its recipient.</summary>
/// <param name="Embryo">The embryo.</param>
/// <param name="Recipient">She.</param>
/// <param name="Worth">What the pair is worth.</param>
public sealed record Pair(EmbryoToday Embryo, Recipient Recipient, PairWorth Worth)
{
    /// <summary>The chance that it brings what the programme wants; null where no rate says.</summary>
    public double? Wanted { get; init; }

    /// <summary>The chance of a pregnancy; null likewise.</summary>
    public double? Pregnant { get; init; }

    /// <summary>What is lost in all if she does not have it.</summary>
    public PairWorth Lost { get; init; }

    /// <summary>The embryo that she would have then; null for none.</summary>
    public EmbryoToday? NextBest { get; init; }
}

/// <summary>An embryo without a recipient.</summary>
/// <param name="Embryo">The embryo.</param>
/// <param name="NotMet">Rules of the embryo itself that do not hold; empty where only a recipient is missing.</param>
public sealed record LeftOver(EmbryoToday Embryo, ImmutableArray<(PairRule Rule, bool IsKnown)> NotMet);
