namespace Byrelaw.Language.Rulebooks.Plans;

/// <summary>An amount of money.</summary>
/// <param name="Amount">How much, 0 or more.</param>
/// <param name="Currency">Three capital letters, such as <c>NZD</c>.</param>
public readonly record struct Money(double Amount, string Currency);
