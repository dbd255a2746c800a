namespace Byrelaw.Planning.Budgeting;

/// <summary>Something that is paid for, and how often.</summary>
/// <param name="Per">What it is paid for.</param>
/// <param name="For">The method or the task, where it is paid for one; else null.</param>
/// <param name="Price">Each.</param>
/// <param name="Spread">Standard deviation of the price; 0 where it is fixed.</param>
/// <param name="Number">
/// How many, where that is known beforehand; null for what depends on how the season goes: embryos, embryos frozen, transfers,
/// pregnancies.
/// </param>
public sealed record Charge(CostUnit Per, string? For, double Price, double Spread, double? Number);

/// <summary>Where in the programme money is spent.</summary>
public enum SpentOn
{
    /// <summary>The programme as such.</summary>
    TheProgramme,

    /// <summary>Getting donors and recipients ready: samples, treatments, keep.</summary>
    GettingReady,

    /// <summary>Having embryos: collections or flushes, the laboratory, freezing.</summary>
    Embryos,

    /// <summary>Transfers and the team's coming.</summary>
    Transfers,

    /// <summary>What comes of it.</summary>
    Pregnancies,
}
