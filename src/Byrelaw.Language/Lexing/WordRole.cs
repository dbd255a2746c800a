namespace Byrelaw.Language.Lexing;

/// <summary>What a word of the language does in a line.</summary>
[Flags]
internal enum WordRole
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>It ends a name inside a line: a name that holds one is quoted, or declared.</summary>
    EndsName = 1,

    /// <summary>A line that starts with it is surely meant as a condition.</summary>
    StartsCondition = 2,

    /// <summary>It starts a demand on a number: <c>at least 3</c>.</summary>
    StartsDemand = 4,

    /// <summary>It starts a window: <c>in the last 42 days</c>.</summary>
    StartsWindow = 8,

    /// <summary>It stands inside lines, so that it may be the one that is missing there.</summary>
    InLines = 16,

    /// <summary>It stands inside declarations; any other word would pass for a part of a name there.</summary>
    InDeclarations = 32,

    /// <summary>It says which of several results, or what of them, a condition is about.</summary>
    Chooses = 64,
}
