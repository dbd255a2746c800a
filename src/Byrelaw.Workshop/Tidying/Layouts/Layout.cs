namespace Byrelaw.Workshop.Tidying.Layouts;

/// <summary>How a statement is set, without where it stands.</summary>
internal abstract record Layout;

/// <summary>Words on one line, however long.</summary>
internal sealed record OneLine(string Words) : Layout;

/// <summary>Words, and a text at the end; a long one runs over several lines, each starting below the first.</summary>
/// <param name="Words">What stands before the text.</param>
/// <param name="Text">The text's value.</param>
internal sealed record EndsWithText(string Words, string Text) : Layout;

/// <summary>A line of a table: declarations that follow each other line up.</summary>
/// <param name="Head">The first word. Rows with the same one share all columns, others only the first.</param>
/// <param name="Name">What is declared.</param>
/// <param name="Cells">What is said of it; an empty one keeps its column free.</param>
internal sealed record Row(string Head, string Name, ImmutableArray<string> Cells) : Layout;
