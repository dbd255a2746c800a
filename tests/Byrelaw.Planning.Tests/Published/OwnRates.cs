namespace Byrelaw.Planning.Tests.Published;

/// <summary>Published figures forecast from their own rates: nothing is lost on the way.</summary>
internal static class OwnRates
{
    public static IEnumerable<PublishedSeason> All()
    {
        foreach (var sessions in new[] { Figures.UnitedStates2009, Figures.Japan2009 })
        {
            var forecast = new Forecaster(new(EmbryoSource.Collected(new(sessions.PerSession, sessions.PerSession), sessions.EmbryosPerOocyte), [])).Forecast(new Session(20, []));
            yield return new($"{sessions.Name}: oocytes of 20 sessions", 20.0 * sessions.Oocytes / sessions.Number, forecast.At(Stage.Oocytes));
            yield return new($"{sessions.Name}: embryos of 20 sessions", 20.0 * sessions.Embryos!.Value / sessions.Number, forecast.At(Stage.Embryos));
        }

        foreach (var donors in new[] { Figures.HolsteinHeifers, Figures.LactatingHolsteins })
        {
            var forecast = new Forecaster(new(EmbryoSource.Collected(new(donors.PerSession, donors.PerSession), Rate.Always), [])).Forecast(new Session(donors.Number, []));
            yield return new($"{donors.Name}: oocytes of {donors.Number} donors", donors.Oocytes, forecast.At(Stage.Oocytes));
        }

        foreach (var (name, (pregnant, calved)) in new[] { ("fresh", Figures.Fresh), ("frozen", Figures.Frozen) })
        {
            var forecast = OtherSources.Transfers(100, new(pregnant / 100, 500), (Stage.Calvings, new(calved / pregnant, 300)));
            yield return new($"Lactating Holsteins, {name} [4]: calvings of 100 transfers", calved, forecast.At(Stage.Calvings));
        }
    }
}
