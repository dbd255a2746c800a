namespace Byrelaw.Planning.Tests.Published;

/// <summary>
/// Published figures forecast from the rates of the other sources, as an adviser would who has only those: the plain mean of what the others
/// say, with the weight of 20 animals for a rate and of 10 sessions for a mean.
/// </summary>
internal static class OtherSources
{
    private const double Animals = 20;
    private const double Sessions = 10;

    public static IEnumerable<PublishedSeason> All()
    {
        var (america, japan, lactating) = (Figures.UnitedStates2009, Figures.Japan2009, Figures.LactatingHolsteins);
        yield return new($"{america.Name}: embryos of 20 sessions", 20.0 * america.Embryos!.Value / america.Number,
            Collected(20, Mean(japan.PerSession, lactating.PerSession, Figures.HolsteinsInBrazil), japan.EmbryosPerOocyte.Share).At(Stage.Embryos));
        yield return new($"{japan.Name}: embryos of 20 sessions", 20.0 * japan.Embryos!.Value / japan.Number,
            Collected(20, Mean(america.PerSession, lactating.PerSession, Figures.HolsteinsInBrazil), america.EmbryosPerOocyte.Share).At(Stage.Embryos));
        yield return new($"{lactating.Name}: oocytes of 29", lactating.Oocytes,
            Collected(29, Mean(america.PerSession, japan.PerSession, Figures.HolsteinsInBrazil), 1).At(Stage.Oocytes));

        var pooled = 100.0 * Figures.Pooled.Pregnant / Figures.Pooled.Transfers;
        var keptAfterInsemination = Figures.LostAfterInsemination.Aggregate(1.0, (kept, lost) => kept * (1 - lost));
        yield return new("Fresh, day-7 recipients [5]: pregnant of 100 transfers", pooled,
            Transfers(100, Opinion(Mean(Figures.Fresh.Pregnant, Figures.ChineseHerd, Figures.TimedLactating) / 100)).At(Stage.Pregnant));
        yield return new("Lactating Holsteins, fresh [4]: calvings of 100 transfers", Figures.Fresh.Calved,
            Transfers(100, Opinion(Mean(pooled, Figures.ChineseHerd, Figures.TimedLactating) / 100), (Stage.Calvings, Opinion(keptAfterInsemination))).At(Stage.Calvings));
        yield return new("Lactating Holsteins, frozen [4]: calvings of 100 transfers", Figures.Frozen.Calved,
            Transfers(100, Opinion(Mean(Figures.VitrifiedGyr, Figures.VitrifiedCross) / 100), (Stage.Calvings, Opinion(keptAfterInsemination))).At(Stage.Calvings));
        yield return new("Two injections or implant [10]: transferred of 100 treated", 100.0 * Figures.TwoInjections.Transferred / Figures.TwoInjections.Treated,
            Counts.Of(100, Opinion((double)Figures.InsertWithWatch.InHeat / Figures.InsertWithWatch.Treated)).ThinnedBy(Opinion(Figures.SuitableAfterTiming)));
        yield return new("Review of laboratory embryos [13]: live calves of 100 recipients", Figures.LiveCalves,
            Transfers(100, Opinion(pooled / 100), (Stage.Calvings, Opinion(Figures.Fresh.Calved / Figures.Fresh.Pregnant)), (Stage.Alive, Opinion(1 - Figures.Stillborn)))
                .At(Stage.Alive));
    }

    /// <summary>What comes of so many transfers.</summary>
    public static Forecast Transfers(int transfers, Rate pregnant, params (Stage, Rate)[] after) =>
        new Forecaster(new(EmbryoSource.Frozen(Rate.Always), [new(Stage.Pregnant, pregnant), .. after.Select(step => new Step(step.Item1, step.Item2))]))
            .Forecast(new SessionSize(transfers, []));

    private static Forecast Collected(int sessions, double oocytes, double embryosPerOocyte) =>
        new Forecaster(new(EmbryoSource.Collected(new(oocytes, oocytes, Sessions), embryosPerOocyte >= 1 ? Rate.Always : Opinion(embryosPerOocyte)), []))
            .Forecast(new SessionSize(sessions, []));

    private static Rate Opinion(double share) => new(share, Animals);

    private static double Mean(params double[] figures) => figures.Average();
}
