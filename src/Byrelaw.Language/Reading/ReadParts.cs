namespace Byrelaw.Language.Reading;

/// <summary>What a rulebook was made from, kept for editors.</summary>
/// <param name="Files">All files in the order of reading, the one asked for first.</param>
/// <param name="Phrases">Their names of several words.</param>
/// <param name="Names">All their names.</param>
internal sealed record ReadParts(IReadOnlyList<RuleFile> Files, PhraseBook Phrases, Namespace Names);
