namespace Byrelaw.Workshop.Editing.Names;

/// <summary>A place where a name stands.</summary>
/// <param name="Thing">What it names.</param>
/// <param name="Span">The name as it stands there, without quotes.</param>
/// <param name="Spelling">The name that is written there, folded: one of the thing's names.</param>
/// <param name="Declares">Whether it is declared here; the other places use it.</param>
/// <param name="InQuotes">Whether quotes stand around it.</param>
public sealed record NameUse(NamedThing Thing, SourceSpan Span, string Spelling, bool Declares, bool InQuotes);
