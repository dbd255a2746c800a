namespace Byrelaw.Workshop.Editing.Tokens;

/// <summary>What a word, number or sign of a rule file is.</summary>
public enum TokenClass
{
    /// <summary>A word of the language itself.</summary>
    Keyword,

    /// <summary>A name that means nothing, or nothing yet.</summary>
    Name,

    /// <summary>The name of an event.</summary>
    Event,

    /// <summary>The name of a measure.</summary>
    Measure,

    /// <summary>The name of a test.</summary>
    Test,

    /// <summary>The name of a fact, <c>age</c> and <c>parity</c> included.</summary>
    Fact,

    /// <summary>The name of a spell.</summary>
    Spell,

    /// <summary>The name of a defined condition.</summary>
    Define,

    /// <summary>The name of a date.</summary>
    DateName,

    /// <summary>The name of a list.</summary>
    List,

    /// <summary>An answer of a test or a value of a fact.</summary>
    Answer,

    /// <summary>The name of a rule or a preference, in quotes.</summary>
    RuleName,

    /// <summary>Any other text in quotes.</summary>
    Text,

    /// <summary>A number or a per cent.</summary>
    Number,

    /// <summary>A day.</summary>
    Date,

    /// <summary>A unit of measure or of time.</summary>
    Unit,

    /// <summary>A comma, or the hyphen of a list.</summary>
    Sign,

    /// <summary>A comment.</summary>
    Comment,

    /// <summary>Something that no line may hold.</summary>
    Wrong,
}
