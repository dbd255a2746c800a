namespace Byrelaw.Testing.Documents;

/// <summary>A fenced block of a Markdown page: <c>```byre rules</c> and what stands in it.</summary>
/// <param name="Language">The first word after the fence, such as <c>byre</c>; empty for none.</param>
/// <param name="Rest">What follows it on that line, such as <c>rules</c>; empty for nothing.</param>
/// <param name="Text">The lines inside, each ended with LF.</param>
/// <param name="Line">The page's line (from 1) on which the fence opens.</param>
public sealed record Fence(string Language, string Rest, string Text, int Line);
