namespace Byrelaw.Workshop.Editing.Names;

/// <summary>What one or several spellings stand for. Two are equal where they name the same thing of one rulebook.</summary>
/// <param name="Sort">What it is.</param>
/// <param name="Key">Its declared name, folded.</param>
/// <param name="Owner">For an answer or a value, the folded name of its test or fact; empty for the others.</param>
public sealed record NamedThing(NameSort Sort, string Key, string Owner = "")
{
    /// <summary>A thing by its declared name.</summary>
    public static NamedThing Of(NameSort sort, string name, string owner = "") =>
        new(sort, NameFolding.Fold(name), NameFolding.Fold(owner));
}
