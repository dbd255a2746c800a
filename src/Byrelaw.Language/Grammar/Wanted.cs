namespace Byrelaw.Language.Grammar;

/// <summary>What a leaf of the grammar asks for.</summary>
/// <param name="Kind">What sort of token.</param>
/// <param name="Label">The word itself for a <see cref="LeafKind.Word"/>; for names and texts, what a reader is told to expect.</param>
internal sealed record Wanted(LeafKind Kind, string Label = "");
