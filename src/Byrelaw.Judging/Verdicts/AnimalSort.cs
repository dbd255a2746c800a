namespace Byrelaw.Judging.Verdicts;

/// <summary>What sort of animal one is, as the records say it: the one answer that lists, pages, plans and worked examples read.</summary>
public enum AnimalSort : byte
{
    /// <summary>A female of whom it is not known whether she has calved.</summary>
    NotKnown,

    /// <summary>A female that has calved.</summary>
    Cow,

    /// <summary>A female that has not.</summary>
    Heifer,

    /// <summary>A male.</summary>
    Male,

    /// <summary>Not even the sex is known.</summary>
    SexNotKnown,
}
