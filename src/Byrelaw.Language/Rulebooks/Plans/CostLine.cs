namespace Byrelaw.Language.Rulebooks.Plans;

/// <summary>What a cost is paid for.</summary>
public enum CostUnit
{
    /// <summary>Once, whatever comes of it.</summary>
    Programme,

    /// <summary>One donor at one collection or flush.</summary>
    Collection,

    /// <summary>One embryo fit to transfer.</summary>
    Embryo,

    /// <summary>One embryo frozen and kept.</summary>
    EmbryoFrozen,

    /// <summary>One embryo put into a recipient, the work only.</summary>
    Transfer,

    /// <summary>One embryo put into a recipient, all that the team does for it: excludes the itemised lines.</summary>
    EmbryoTransferred,

    /// <summary>One animal treated (enrolled), used or not.</summary>
    AnimalTreated,

    /// <summary>One sample at the laboratory.</summary>
    Sample,

    /// <summary>One coming of the team.</summary>
    Visit,

    /// <summary>One recipient kept for one day.</summary>
    DayOfKeep,

    /// <summary>One pregnancy at the first check.</summary>
    Pregnancy,

    /// <summary>One recipient that calves a cycle later than she might have.</summary>
    LostCycle,
}

/// <summary><c>assume cost per transfer 45 NZD</c>.</summary>
/// <param name="Per">What it is paid for.</param>
/// <param name="Method">For animals treated: by which method only; null for any.</param>
/// <param name="Amount">How much.</param>
/// <param name="Spread">Standard deviation, in the same money; null where the price is fixed.</param>
/// <param name="Because">The reason.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="Span">Where it is written.</param>
public sealed record CostLine(CostUnit Per, string? Method, Money Amount, double? Spread, string? Because, string? Source, SourceSpan Span)
{
    /// <summary>Whether an all-in cost per embryo transferred would pay it too.</summary>
    public bool IsItemised => Per is CostUnit.Collection or CostUnit.Embryo or CostUnit.EmbryoFrozen or CostUnit.Transfer or CostUnit.Visit or CostUnit.Pregnancy;
}
