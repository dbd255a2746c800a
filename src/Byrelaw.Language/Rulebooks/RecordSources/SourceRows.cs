namespace Byrelaw.Language.Rulebooks.RecordSources;

/// <summary>What a row of a source is about.</summary>
public enum SourceRows
{
    /// <summary>One animal: her facts, and at most one entry of each kind.</summary>
    Animals,

    /// <summary>One thing that happened, or one sample.</summary>
    Events,
}

/// <summary>In which order a source writes the parts of a date.</summary>
public enum DateOrder
{
    /// <summary>As the landed files do: <c>2026-09-20</c>.</summary>
    YearFirst,

    /// <summary><c>20/09/2026</c>.</summary>
    DayFirst,

    /// <summary><c>09/20/2026</c>.</summary>
    MonthFirst,
}
