namespace Byrelaw.Judging.Tuning;

/// <summary>What sort of thing animals may have in common.</summary>
public enum TraitKind
{
    /// <summary>Cow or heifer.</summary>
    Sort,

    /// <summary>How often she has calved.</summary>
    Parity,

    /// <summary>Her mob on the judging day.</summary>
    Mob,

    /// <summary>A fact with declared values, such as her breed.</summary>
    Fact,

    /// <summary>How long ago she calved, in stretches of four weeks.</summary>
    WeeksCalved,

    /// <summary>Another rule that is met, but only just.</summary>
    CloseRule,
}

/// <summary>Something that is so of an animal.</summary>
/// <param name="Kind">What sort of thing.</param>
/// <param name="Name">The fact's name; empty for the other kinds.</param>
/// <param name="Value">The value: <c>heifer</c>, <c>3</c>, <c>River</c>, <c>8 to 11</c>, the rule's name.</param>
public readonly record struct Trait(TraitKind Kind, string Name, string Value);

/// <summary>A trait that tells some animals from the rest of their list.</summary>
/// <param name="Trait">The trait.</param>
/// <param name="InGroup">How many of the group have it.</param>
/// <param name="GroupSize">Of how many.</param>
/// <param name="InAll">How many of the whole list have it, the group among them.</param>
/// <param name="All">Of how many.</param>
/// <param name="Chance">How likely so many of the group would have it, were the group drawn from the list by lot; every trait looked at counted in.</param>
public sealed record CommonTrait(Trait Trait, int InGroup, int GroupSize, int InAll, int All, double Chance);
