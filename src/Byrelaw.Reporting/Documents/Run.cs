namespace Byrelaw.Reporting.Documents;

/// <summary>How a stretch of words is set off from those around it.</summary>
public enum RunStyle
{
    /// <summary>Not at all.</summary>
    Plain,

    /// <summary>Bold.</summary>
    Bold,

    /// <summary>Faint, where a writer can.</summary>
    Faint,

    /// <summary>Take her as in calf: the one filled label of a page, for what the floor says and for nothing else.</summary>
    Danger,

    /// <summary>May be in calf: the one double edge of a page, for what the floor does not know and for nothing else.</summary>
    MayBe,

    /// <summary>Framed: what stands on her row and is no answer, such as a waiver.</summary>
    Note,

    /// <summary>An answer: a shape, a blank, a word. Its edge tells it from the others without colour.</summary>
    Ready,

    /// <inheritdoc cref="Ready"/>
    OnCourse,

    /// <inheritdoc cref="Ready"/>
    Later,

    /// <inheritdoc cref="Ready"/>
    Ask,

    /// <inheritdoc cref="Ready"/>
    No,
}

/// <summary>A stretch of words in one style.</summary>
/// <param name="Text">Plain words; a writer makes them mean nothing but themselves.</param>
/// <param name="Style">How they are set off.</param>
/// <param name="Target">The file of this report that they lead to, or <c>#</c> and a place of this page; null for none.</param>
public readonly record struct Run(string Text, RunStyle Style, string? Target = null);
