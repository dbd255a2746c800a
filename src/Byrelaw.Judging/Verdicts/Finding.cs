namespace Byrelaw.Judging.Verdicts;

/// <summary>What one condition of a rule found on a judging day, written down by the code that decided it.</summary>
public sealed record Finding
{
    /// <summary>A condition that is neither a list nor a defined name.</summary>
    public required Condition Condition { get; init; }

    /// <summary>The names of the defines it was reached through, outermost first; empty for one that stands in the rule itself.</summary>
    public ImmutableArray<string> Through { get; init; } = [];

    /// <summary>Its answer on the judging day.</summary>
    public required Truth Truth { get; init; }

    /// <summary>It is asked the other way round (under <c>not</c> or <c>none of</c>): the rule wants it false.</summary>
    public bool Inverted { get; init; }

    /// <summary>Whether it bears on the rule's answer: turning it (perhaps with others) turns the rule.</summary>
    public bool Decides { get; init; }

    /// <summary>What was found.</summary>
    public required Found Found { get; init; }

    /// <summary>How far from its limit, in the limit's unit: 0 or more where it holds, negative where it fails; null where there is no such number.</summary>
    public double? Margin { get; init; }

    /// <summary>The records it rests on, oldest first.</summary>
    public ImmutableArray<Evidence> Evidence { get; init; } = [];

    /// <summary>What would settle it; empty where it is known.</summary>
    public ImmutableArray<Missing> Missing { get; init; } = [];

    /// <summary>What would turn it, where the rule fails because of it; else null.</summary>
    public Remedy? Remedy { get; init; }
}
