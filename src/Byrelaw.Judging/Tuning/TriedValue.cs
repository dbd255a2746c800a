namespace Byrelaw.Judging.Tuning;

/// <summary>A value that stands for a range in which no answer can change.</summary>
/// <param name="Range">The range.</param>
/// <param name="Value">One of its values, the one that is judged.</param>
internal readonly record struct TriedValue(ValueRange Range, decimal Value);
