namespace Byrelaw.Workshop.Editing.Suggestions;

/// <summary>Something that may stand at a place.</summary>
/// <param name="Text">As it would be written there.</param>
/// <param name="Sort">What a name names; null for words of the language, units and paths.</param>
/// <param name="Detail">What it is, in a few words.</param>
/// <param name="Replaces">What is there already and would go: the part of it that has been typed; empty where nothing has.</param>
public sealed record Suggestion(string Text, NameSort? Sort, string Detail, SourceSpan Replaces)
{
    /// <summary>Suggestions with a smaller number are shown first.</summary>
    public int Rank { get; init; }
}
