namespace Byrelaw.Testing.Problems;

/// <summary>What a page teaches about one problem.</summary>
/// <param name="Code">Such as <c>B0204</c>.</param>
/// <param name="Wrong">What the program says of the wrong example.</param>
/// <param name="Mended">What it says of the mended one.</param>
public sealed record Lesson(string Code, Said Wrong, Said Mended);
