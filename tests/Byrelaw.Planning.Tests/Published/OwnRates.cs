namespace Byrelaw.Planning.Tests.Published;

/// <summary>Published figures forecast from their own rates: nothing is lost on the way.</summary>
internal static class OwnRates
{
    public static IEnumerable<PublishedSeason> All()
    {
        foreach (var sessions in new[] { Figures.UnitedStates2009, Figures.Japan2009 })
        {
            var forecast = new Forecaster(new(EmbryoSource.Collected(new(sessions.PerSession, sessions.PerSession), sessions.EmbryosPerOocyte), [])).Forecast(new SessionSize(20, []));
            yield return new($"{sessions.Name}: oocytes of 20 sessions", 20.0 * sessions.Oocytes / sessions.Number, forecast.At(Stage.Oocytes));
            yield return new($"{sessions.Name}: embryos of 20 sessions", 20.0 * sessions.Embryos!.Value / sessions.Number, forecast.At(Stage.Embryos));
        }

        foreach (var donors in new[] { Figures.HolsteinHeifers, Figures.LactatingHolsteins })
        {
            var forecast = new Forecaster(new(EmbryoSource.Collected(new(donors.PerSession, donors.PerSession), Rate.Always), [])).Forecast(new SessionSize(donors.Number, []));
            yield return new($"{donors.Name}: oocytes of {donors.Number} donors", donors.Oocytes, forecast.At(Stage.Oocytes));
        }

        foreach (var (name, (pregnant, calved)) in new[] { ("fresh", Figures.Fresh), ("frozen", Figures.Frozen) })
        {
            var forecast = OtherSources.Transfers(100, new(pregnant / 100, 500), (Stage.Calvings, new(calved / pregnant, 300)));
            yield return new($"Lactating Holsteins, {name} [4]: calvings of 100 transfers", calved, forecast.At(Stage.Calvings));
        }

        foreach (var row in Apart())
        {
            yield return row;
        }
    }

    /// <summary>Heifers and cows of one season, each with the rates of their own.</summary>
    private static IEnumerable<PublishedSeason> Apart()
    {
        var (heifers, cows) = (Figures.HolsteinHeifers, Figures.LactatingHolsteins);
        var own = Enumerable.Range(1, cows.Number).Select(cow => new OwnDonor($"{cow}", new(cows.PerSession, cows.PerSession), Rate.Always)).ToImmutableArray();
        var donors = new Forecaster(new(EmbryoSource.Collected(new(heifers.PerSession, heifers.PerSession), Rate.Always), []) { Own = own }).Forecast(new SessionSize(heifers.Number, []) { Own = own });
        yield return new("60 Holstein heifers and 29 in milk [2]: their oocytes", heifers.Oocytes + cows.Oocytes, donors.At(Stage.Oocytes));

        PlanStatements plans = new()
        {
            Assumptions =
            [
                Of(AssumedQuantity.PregnantPerTransfer, Carrier.Cows, Figures.Fresh.Pregnant / 100), Of(AssumedQuantity.PregnantPerTransfer, Carrier.Heifers, Figures.PregnantHeifers),
                Of(AssumedQuantity.KeptFromFirstCheckToCalving, null, 1),
                Of(AssumedQuantity.AliveAtADayOld, Carrier.Cows, 1 - Figures.StillbornOfOthers), Of(AssumedQuantity.AliveAtADayOld, Carrier.Heifers, 1 - Figures.StillbornOfFirstCalvers),
            ],
        };
        yield return new("60 Holsteins in milk [4] and 40 heifers [15]: pregnant", (0.6 * Figures.Fresh.Pregnant) + (40 * Figures.PregnantHeifers), Of(plans, 0.4).At(Stage.Pregnant));

        // So many of all calvings are first ones as make 4.29% of 7.7% and 3.5%.
        var first = (Figures.Stillborn - Figures.StillbornOfOthers) / (Figures.StillbornOfFirstCalvers - Figures.StillbornOfOthers);
        var born = Of(plans, first);
        yield return new("Ireland [14], first calvers and others apart: alive of 100 born", 100 * (1 - Figures.Stillborn), born.At(Stage.Calvings) is { Mean: > 0 } calvings
            ? Counts.Of(100, new(born.At(Stage.Alive).Mean / calvings.Mean)) : Counts.Exactly(0));
    }

    private static Assumption Of(AssumedQuantity quantity, Carrier? carrier, double share) => new() { Quantity = quantity, In = carrier, Share = new(share, null, null, default), Span = default };

    private static Forecast Of(PlanStatements plans, double heifers) =>
        new Forecaster(ChainReading.Of(plans, new Aims { Embryos = EmbryoOrigin.Frozen }, CarrierShares.Exactly(heifers)).Chain!).Forecast(new SessionSize(100, []));
}
