namespace Byrelaw.Checking.Trouble;

/// <summary>Something found to be wrong with rules that can be read.</summary>
/// <param name="Sort">What an acceptance calls it.</param>
/// <param name="Name">The rule, preference, define or other name that has it.</param>
/// <param name="Other">The other name, where the trouble is between two; else null.</param>
/// <param name="Problem">The same in words.</param>
internal sealed record TroubleFound(TroubleSort Sort, string Name, string? Other, Diagnostic Problem);
