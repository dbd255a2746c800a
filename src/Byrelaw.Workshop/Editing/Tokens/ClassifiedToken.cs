namespace Byrelaw.Workshop.Editing.Tokens;

/// <summary>One word, number, text, sign or comment of a file. Texts that run over lines are one token a line.</summary>
/// <param name="Span">Where; on one line.</param>
/// <param name="Class">What it is.</param>
public readonly record struct ClassifiedToken(SourceSpan Span, TokenClass Class);
