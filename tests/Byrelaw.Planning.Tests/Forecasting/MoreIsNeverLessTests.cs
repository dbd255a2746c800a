using CsCheck;

namespace Byrelaw.Planning.Tests.Forecasting;

/// <summary>What must hold for every programme, whatever its numbers.</summary>
public sealed class MoreIsNeverLessTests
{
    private static readonly Gen<Rate> Rates = Gen.Select(Gen.Double[0.05, 0.95], Gen.Double[1, 200], (share, weight) => new Rate(share, weight));

    private static readonly Gen<(Chain Chain, SessionSize Session)> Programmes = Gen.Select(
        Gen.Double[0.5, 20], Gen.Double[0.2, 3], Rates, Rates, Rates, Gen.Int[1, 5], Gen.Int[0, 15], Gen.Int[1, 3],
        (oocytes, spread, fit, used, pregnant, donors, treated, times) => (
            new Chain(EmbryoSource.Collected(new(oocytes, spread * oocytes, 12), fit), [new(Stage.Pregnant, pregnant)], new(Stage.Pregnant, 2, 0.8)),
            new SessionSize(donors, [new(new("Method", used), treated)], times)));

    [Fact]
    public void One_more_of_anything_never_makes_it_less_likely() => Programmes.Hold(
        programme =>
        {
            var forecaster = new Forecaster(programme.Chain);
            foreach (var worth in Worth.Of(forecaster, [programme.Session]))
            {
                // The stand-ins of a vague rate move a little when sessions are added.
                worth.More.ShouldBeGreaterThan(-0.002, worth.OneMore.ToString());
                worth.Chance.ShouldBeGreaterThan(-0.004, worth.OneMore.ToString());
            }
        },
        count: 25, oneByOne: true);

    [Fact]
    public void Chances_add_up_and_nothing_is_made_from_nothing() => Programmes.Hold(
        programme =>
        {
            var forecast = new Forecaster(programme.Chain).Forecast(programme.Session);
            foreach (var stage in forecast.Stages)
            {
                var sum = 0.0;
                foreach (var chance in stage.Counts.Chances)
                {
                    chance.ShouldBeGreaterThanOrEqualTo(0);
                    sum += chance;
                }

                sum.ShouldBe(1, 1e-9);
            }

            forecast.At(Stage.Transfers).Mean.ShouldBeLessThanOrEqualTo(Math.Min(forecast.At(Stage.Embryos).Mean, forecast.At(Stage.Recipients).Mean) + 0.01);
            (forecast.At(Stage.Transfers).Mean + forecast.Surplus).ShouldBe(forecast.At(Stage.Embryos).Mean, 0.01 * (1 + forecast.At(Stage.Embryos).Mean));
        },
        count: 25, oneByOne: true);

    [Fact]
    public void The_number_that_is_enough_grows_with_what_is_asked() => Gen.Select(Rates, Gen.Int[0, 12], Gen.Double[0.5, 0.95]).Hold(
        (rate, accepted, certainty) =>
        {
            var (fewer, more) = (Enough.Of(accepted, certainty, rate, 2000).Animals ?? int.MaxValue, Enough.Of(accepted + 1, certainty, rate, 2000).Animals ?? int.MaxValue);
            more.ShouldBeGreaterThanOrEqualTo(fewer);
            fewer.ShouldBeGreaterThanOrEqualTo(accepted);
        },
        count: 40, oneByOne: true);
}
