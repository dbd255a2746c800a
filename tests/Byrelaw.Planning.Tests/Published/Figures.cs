namespace Byrelaw.Planning.Tests.Published;

/// <summary>
/// Published counts and rates. The numbers in brackets are those of the list of sources in docs/forecast.md; most were read in abstracts.
/// </summary>
internal static class Figures
{
    public static readonly Sessions UnitedStates2009 = new("United States 2009 [1]", 4_885, 80_505, 19_806);

    public static readonly Sessions Japan2009 = new("Japan 2009 [1]", 1_225, 12_919, 2_256);

    public static readonly Sessions LactatingHolsteins = new("Lactating Holsteins, unstimulated [2]", 29, 509, null);

    public static readonly Sessions HolsteinHeifers = new("Holstein heifers, unstimulated [2]", 60, 777, null);

    /// <summary>Oocytes per session of Holstein donors in Brazil [3].</summary>
    public const double HolsteinsInBrazil = 19.3;

    /// <summary>Lactating Holsteins, embryos made in the laboratory [4]: pregnant at day 32, and calved, of 100 transfers.</summary>
    public static readonly (double Pregnant, double Calved) Fresh = (56.1, 45.5), Frozen = (41.6, 30.2);

    /// <summary>Fresh embryos, day-7 embryo and recipient: 2,065 of 4,749 [5].</summary>
    public static readonly (int Pregnant, int Transfers) Pooled = (2_065, 4_749);

    /// <summary>A Chinese dairy herd, fresh [6].</summary>
    public const double ChineseHerd = 43.49;

    /// <summary>Lactating cows, timed, fresh [7].</summary>
    public const double TimedLactating = 27.3;

    /// <summary>Frozen embryos of Gyr, and of Holstein dams [8].</summary>
    public const double VitrifiedGyr = 46.1, VitrifiedCross = 40.3;

    /// <summary>Lost in three stretches from day 30 to day 90 after insemination [9].</summary>
    public static readonly double[] LostAfterInsemination = [0.13, 0.07, 0.02];

    /// <summary>Recipients treated, presented and transferred to [10].</summary>
    public static readonly (int Treated, int Presented, int Transferred) TwoInjections = (763, 526, 448);

    /// <summary>In heat after an insert with heat watch [11].</summary>
    public static readonly (int InHeat, int Treated) InsertWithWatch = (488, 640);

    /// <summary>Recipients with a suitable corpus luteum after timed treatment, the middle of 75 to 85 in a hundred [12].</summary>
    public const double SuitableAfterTiming = 0.80;

    /// <summary>Recipients that produce a live calf from an embryo made in the laboratory [13].</summary>
    public const double LiveCalves = 27;

    /// <summary>Calves dead within a day, Ireland [14]: of all, of first calvers, of others.</summary>
    public const double Stillborn = 0.0429, StillbornOfFirstCalvers = 0.077, StillbornOfOthers = 0.035;

    /// <summary>Holstein heifers, flushed embryos transferred fresh by surgery: pregnant, of 7,652 [15].</summary>
    public const double PregnantHeifers = 0.713;
}

/// <summary>Collections of one publication.</summary>
/// <param name="Name">With its source's number.</param>
/// <param name="Number">Sessions (or donors, each collected once).</param>
/// <param name="Oocytes">Over all of them.</param>
/// <param name="Embryos">Over all of them; null where none are told.</param>
internal sealed record Sessions(string Name, int Number, int Oocytes, int? Embryos)
{
    public double PerSession => (double)Oocytes / Number;

    public Rate EmbryosPerOocyte => Rate.From(Embryos!.Value, Oocytes);
}
