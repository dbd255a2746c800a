namespace Byrelaw.Language.PhraseBooks;

/// <summary>The tokens of one line that make up a declared name.</summary>
internal readonly record struct NameRange(int Start, int Count);
