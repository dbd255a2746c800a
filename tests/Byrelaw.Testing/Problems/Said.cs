namespace Byrelaw.Testing.Problems;

/// <summary>What the program says of an example.</summary>
/// <param name="Text">As people read it; empty for nothing.</param>
/// <param name="Codes">The codes of its problems, in that order.</param>
public sealed record Said(string Text, IReadOnlyList<string> Codes);
