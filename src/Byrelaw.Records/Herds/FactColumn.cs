namespace Byrelaw.Records.Herds;

/// <summary>Whether a fact has a value.</summary>
public enum FactState : byte
{
    /// <summary>The cell is blank, or there is no such column.</summary>
    Missing,

    /// <summary>There is a value.</summary>
    Known,

    /// <summary>Something stands there that could not be read: a value, but not known which.</summary>
    Unreadable,
}

/// <summary>One fact over the whole herd, indexed by animal.</summary>
public sealed class FactColumn
{
    /// <summary>Whether there is such a column: without one nobody's value is known, nor whether it was written down.</summary>
    public bool IsThere { get; init; } = true;

    /// <summary>Whether each animal has a value.</summary>
    public required FactState[] States { get; init; }

    /// <summary>Numbers and amounts (in the declared unit), and dates as day numbers; empty for texts.</summary>
    public double[] Numbers { get; init; } = [];

    /// <summary>Texts, identities, and the declared spelling of one-of values; empty for numbers and dates.</summary>
    public string?[] Texts { get; init; } = [];
}
