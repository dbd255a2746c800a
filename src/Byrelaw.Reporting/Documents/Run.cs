namespace Byrelaw.Reporting.Documents;

/// <summary>How a stretch of words is set off from those around it.</summary>
public enum RunStyle
{
    /// <summary>Not at all.</summary>
    Plain,

    /// <summary>Bold.</summary>
    Bold,

    /// <summary>Faint, where a writer can: on a terminal.</summary>
    Faint,
}

/// <summary>A stretch of words in one style.</summary>
/// <param name="Text">Plain words; a writer makes them mean nothing but themselves.</param>
/// <param name="Style">How they are set off.</param>
/// <param name="Target">The file of this report that they lead to; null for none.</param>
public readonly record struct Run(string Text, RunStyle Style, string? Target = null);
