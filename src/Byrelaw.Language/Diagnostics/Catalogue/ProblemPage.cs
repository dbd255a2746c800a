namespace Byrelaw.Language.Diagnostics;

/// <summary>What is taught about one problem.</summary>
/// <param name="Code">Such as <c>B0204</c>.</param>
/// <param name="Title">What is wrong, in a few words.</param>
/// <param name="Text">Markdown: what it means, an example that has the problem, the message, and the example mended.</param>
public sealed record ProblemPage(string Code, string Title, string Text);
