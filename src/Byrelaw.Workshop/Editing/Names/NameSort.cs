namespace Byrelaw.Workshop.Editing.Names;

/// <summary>What a name names.</summary>
public enum NameSort
{
    /// <summary>An event.</summary>
    Event,

    /// <summary>A measure.</summary>
    Measure,

    /// <summary>A test.</summary>
    Test,

    /// <summary>An answer of a test.</summary>
    Answer,

    /// <summary>A fact.</summary>
    Fact,

    /// <summary>A value of a fact.</summary>
    Value,

    /// <summary>A spell.</summary>
    Spell,

    /// <summary>A defined condition.</summary>
    Define,

    /// <summary>A date of the programme.</summary>
    Date,

    /// <summary>A name that the language itself gives a meaning.</summary>
    BuiltIn,

    /// <summary>A list that there are rules for.</summary>
    List,

    /// <summary>A rule or a preference.</summary>
    Rule,
}
