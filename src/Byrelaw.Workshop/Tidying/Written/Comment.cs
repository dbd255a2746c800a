namespace Byrelaw.Workshop.Tidying.Written;

/// <summary>A comment as it stands in a file.</summary>
/// <param name="Text">From the <c>#</c> on, without spaces at its end.</param>
/// <param name="IsBeside">Whether it stands on the line of a statement, after it.</param>
/// <param name="IsIndented">Whether something, if only spaces, stands before it on its line.</param>
/// <param name="HasBlankBefore">Whether an empty line stands between it and what is above it.</param>
internal sealed record Comment(string Text, bool IsBeside, bool IsIndented, bool HasBlankBefore);
