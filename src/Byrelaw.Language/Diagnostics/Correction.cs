namespace Byrelaw.Language.Diagnostics;

/// <summary>
/// A change to the files that mends a problem, as an editor may offer it. What <see cref="Diagnostic.Help"/> says in
/// words, this says to the letter.
/// </summary>
/// <param name="Title">What it does, such as <c>write `age at least 13 months`</c>.</param>
/// <param name="Replacements">One or more that do not overlap. Places count in the text before any of them is made.</param>
public sealed record Correction(string Title, ImmutableArray<Replacement> Replacements)
{
    /// <summary>Two corrections are equal that make the same change.</summary>
    public bool Equals(Correction? other) => other is not null && Title == other.Title && Replacements.SequenceEqual(other.Replacements);

    /// <inheritdoc/>
    public override int GetHashCode() => Title.GetHashCode(StringComparison.Ordinal);
}

/// <summary>New text in the place of some old one.</summary>
/// <param name="File">As shown: the same as <see cref="Diagnostic.File"/> for a place in that file.</param>
/// <param name="Line">From 1.</param>
/// <param name="Column">From 1, in UTF-16 units.</param>
/// <param name="Length">How much of the text goes, in UTF-16 units, line ends counted; 0 where something is only put in.</param>
/// <param name="Text">What comes in its place; empty where something is only taken out.</param>
public sealed record Replacement(string File, int Line, int Column, int Length, string Text);
