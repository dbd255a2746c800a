namespace Byrelaw.Planning.Budgeting;

/// <summary>Something that a season does and that the programme gives no price for. It is counted nowhere, and is said: no price is not a price of nothing.</summary>
/// <param name="Per">What would be paid for.</param>
/// <param name="For">The method, for animals treated by one; else null.</param>
public sealed record NotPriced(CostUnit Per, string? For = null);
