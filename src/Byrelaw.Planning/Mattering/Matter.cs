namespace Byrelaw.Planning.Mattering;

/// <summary>How much one assumption matters: what is to be expected of what is wanted, were it known to be low, or high.</summary>
/// <param name="Assumed">The line; null for a share of a method.</param>
/// <param name="Method">The method; null for a line.</param>
/// <param name="Step">Which of its shares.</param>
/// <param name="Low">One chance in ten that the truth lies below; of one taken as exact, a tenth less.</param>
/// <param name="High">One in ten above; of one taken as exact, a tenth more.</param>
/// <param name="IsExact">Whether it is taken as exact.</param>
/// <param name="AtLow">What to expect then.</param>
/// <param name="AtHigh">What to expect then.</param>
public sealed record Matter(Assumption? Assumed, string? Method, UseStep? Step, double Low, double High, bool IsExact, double AtLow, double AtHigh)
{
    /// <summary>How far apart the two are.</summary>
    public double Difference => Math.Abs(AtHigh - AtLow);
}
