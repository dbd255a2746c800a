namespace Byrelaw.Workshop.Editing.Outlines;

/// <summary>One block of a file: a head line and the lines below it.</summary>
/// <param name="Head">The head's first word, such as <c>rule</c>.</param>
/// <param name="Name">What it is about, such as a rule's name; empty where nothing is named.</param>
/// <param name="NameSpan">Where the name stands; the head where nothing is named.</param>
/// <param name="Span">From the head to the end of the block's last line.</param>
public sealed record OutlineItem(string Head, string Name, SourceSpan NameSpan, SourceSpan Span);
