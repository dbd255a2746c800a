namespace Byrelaw.Records.Cells;

/// <summary>The values that a result allows, both ends included.</summary>
internal readonly record struct AllowedRange(double Low, double High)
{
    /// <summary>A result that is not known may be any number at all.</summary>
    public static readonly AllowedRange NotKnown = new(double.NegativeInfinity, double.PositiveInfinity);
}
