namespace Byrelaw.Planning.Forecasting;

/// <summary>Where embryos come from.</summary>
/// <param name="Kind">Collected eggs, flushes, or straws.</param>
/// <param name="PerTime">Oocytes per collection, embryos per flush, or one per straw.</param>
/// <param name="Fit">Fit for transfer: embryos per oocyte, or the share of straws that thaw well.</param>
public sealed record EmbryoSource(EmbryoSourceKind Kind, Yield PerTime, Rate Fit)
{
    /// <summary>Embryos made in the laboratory from collected eggs.</summary>
    /// <param name="oocytes">Per collection of one donor.</param>
    /// <param name="embryosPerOocyte">Embryos fit for transfer, of oocytes recovered.</param>
    public static EmbryoSource Collected(Yield oocytes, Rate embryosPerOocyte) => new(EmbryoSourceKind.Collected, oocytes, embryosPerOocyte);

    /// <summary>Embryos flushed from superovulated donors.</summary>
    /// <param name="embryos">Fit for transfer, per flush of one donor.</param>
    public static EmbryoSource Flushed(Yield embryos) => new(EmbryoSourceKind.Flushed, embryos, Rate.Always);

    /// <summary>Embryos from the tank.</summary>
    /// <param name="fitAfterThawing">Of straws thawed.</param>
    public static EmbryoSource Frozen(Rate fitAfterThawing) => new(EmbryoSourceKind.Frozen, Yield.One, fitAfterThawing);

    /// <summary>Embryos fit for transfer, on average each time.</summary>
    public double EmbryosPerTime => PerTime.Mean * Fit.Share;
}

/// <summary>How embryos are come by.</summary>
public enum EmbryoSourceKind
{
    /// <summary>Made from collected eggs.</summary>
    Collected,

    /// <summary>Flushed.</summary>
    Flushed,

    /// <summary>Thawed.</summary>
    Frozen,
}
