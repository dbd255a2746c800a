namespace Byrelaw.Language.Rulebooks.Words;

/// <summary>What a word in other people's records may mean: <c>hint AI may be mating</c>. It feeds help and doubt; nothing is read by it.</summary>
/// <param name="Word">As written.</param>
/// <param name="Kind">What it may be.</param>
/// <param name="Declared">Where.</param>
public sealed record Hint(string Word, Kind Kind, SourceSpan Declared);
