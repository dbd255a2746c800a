namespace Byrelaw.Planning.Forecasting;

/// <summary>What one donor gives each time, in one case of what is not known of the rates: how far yield and share lie from what is expected, in standard deviations.</summary>
/// <param name="yield">Of the yield.</param>
/// <param name="fit">Of the share that is fit.</param>
internal sealed class DonorCase(double yield, double fit)
{
    /// <summary>Mean and variance of her embryos. Doubts of one sort go together for all donors: the same laboratory, feed and weather.</summary>
    public (double Mean, double Variance) Embryos(Yield perTime, Rate share)
    {
        var (mean, variance) = Oocytes(perTime);
        var part = Math.Clamp(share.Share + (fit * Math.Sqrt(share.Variance)), 0, 1);
        return (mean * part, (part * part * variance) + (part * (1 - part) * mean));
    }

    /// <summary>Mean and variance of her oocytes. A higher mean has a higher spread too, so that variance keeps its ratio to the mean.</summary>
    public (double Mean, double Variance) Oocytes(Yield perTime)
    {
        var mean = Math.Max(0, perTime.Mean + (perTime.Weight is { } weight ? yield * perTime.Spread / Math.Sqrt(weight) : 0));
        return (mean, perTime.Mean > 0 ? perTime.Spread * perTime.Spread * mean / perTime.Mean : 0);
    }
}
