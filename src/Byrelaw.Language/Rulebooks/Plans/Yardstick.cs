namespace Byrelaw.Language.Rulebooks.Plans;

/// <summary>A figure that people quote. It is held against the plan, and changes nothing.</summary>
/// <param name="Method">The method of which so many are used; null for what an embryo transferred costs.</param>
/// <param name="Used">So many of those treated, from 0 to 1; null for the cost.</param>
/// <param name="Cost">What an embryo transferred costs; null for a share.</param>
/// <param name="Because">Who says so, or why.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="Span">Where it is written.</param>
public sealed record Yardstick(string? Method, double? Used, Money? Cost, string? Because, string? Source, SourceSpan Span);
