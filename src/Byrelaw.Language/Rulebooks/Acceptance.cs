namespace Byrelaw.Language.Rulebooks;

/// <summary>What may be found to be wrong with rules that can be read, before any animal is judged by them.</summary>
public enum TroubleSort
{
    /// <summary>No animal can meet it.</summary>
    NeverMet,

    /// <summary>No animal can fail it.</summary>
    AlwaysMet,

    /// <summary>No animal can meet it and another rule.</summary>
    NeverMetWith,

    /// <summary>Whoever meets another rule meets it.</summary>
    ImpliedBy,

    /// <summary>Nothing uses it.</summary>
    NeverUsed,

    /// <summary>No result is ever in time for it.</summary>
    OutOfReach,

    /// <summary>Animals of which nothing is known pass, where pregnancy or disease is at stake.</summary>
    PassesNotKnown,

    /// <summary>A test counts that was done too early to tell.</summary>
    TestsEarly,

    /// <summary>Its name looks like another.</summary>
    LooksLike,
}

/// <summary>A trouble that people know of and live with. It changes no answer.</summary>
/// <param name="Name">The rule, preference, define or other name that has it, in its declared spelling.</param>
/// <param name="Trouble">Which.</param>
/// <param name="Other">The other name, where the trouble is between two; else null.</param>
/// <param name="Because">The reason.</param>
/// <param name="Agreement">Who and when; null where the file accepts what it says itself.</param>
/// <param name="Span">Where.</param>
public sealed record Acceptance(string Name, TroubleSort Trouble, string? Other, string Because, Agreement? Agreement, SourceSpan Span);
