namespace Byrelaw.Planning.Tests.Forecasting;

public sealed class ForecastTests
{
    private const int Seasons = 40_000;

    /// <summary>
    /// A sample's distribution strays from the true one by more than 1.95 / √n in one case of a thousand (Kolmogorov's limit; from
    /// memory); for 40,000 seasons that is 0.0098. Whole numbers stray less.
    /// </summary>
    private const double Tolerance = 0.0098;

    public static TheoryData<string, Chain, SessionSize[]> Programmes() => new()
    {
        { "one session", Examples.Collected(), [Examples.Session(5, 12)] },
        { "four sessions", Examples.Collected(), [Examples.Session(5, 12, 4)] },
        { "vague rates and a vague mean", Examples.Collected(8, 6), [Examples.Session(4, 10, 3)] },
        { "two methods, sessions that differ", Examples.Collected(), [Examples.Session(5, 6, 2, 30), Examples.Session(3, 8)] },
        { "straws for whoever finds no fresh embryo", Examples.Collected().WithTank(6), [Examples.Session(3, 12, 2), Examples.Session(5, 9)] },
        { "donors of their own, and animals to ask about", Examples.Collected(), [Examples.Session(2, 8) with { Own = [new("1021", new(22, 8), new(0.3)), new("1048", new(4, 3), new(0.1), true)], DonorsAsked = 2, Usable = 0.6 }, Asking(0.6)] },
        { "a tank that is never empty", Examples.Collected(8, 6).WithTank(60), [Examples.Session(4, 20)] },
    };

    /// <summary>Some are sure and some are to ask about, of whom so many are usable.</summary>
    private static SessionSize Asking(double usable) => new(2, [new(Examples.Insert, 7) { Asked = 6 }], 2) { DonorsAsked = 3, Usable = usable };

    [Fact]
    public void As_many_as_are_usable_lie_between_those_named_and_all_who_are_asked_about()
    {
        var forecaster = new Forecaster(Examples.Collected());
        var (none, all) = (forecaster.Forecast(new SessionSize(2, [new(Examples.Insert, 7)], 2)), forecaster.Forecast(new SessionSize(5, [new(Examples.Insert, 13)], 2)));
        var between = new[] { 0, 0.3, 0.6, 0.9, 1 }.Select(usable => forecaster.Forecast(Asking(usable))).ToList();

        foreach (var stage in none.Stages.Select(stage => stage.Stage))
        {
            var means = between.Select(forecast => forecast.At(stage).Mean).ToList();
            means.Zip(means.Skip(1)).ShouldAllBe(pair => pair.Second > pair.First - 1e-4, $"{stage}");
            Examples.Apart(between[0].At(stage), none.At(stage)).ShouldBeLessThan(0.001, $"{stage}");
            Examples.Apart(between[^1].At(stage), all.At(stage)).ShouldBeLessThan(0.001, $"{stage}");
        }
    }

    [Fact]
    public void A_donor_of_her_own_with_what_is_expected_of_all_changes_next_to_nothing()
    {
        var chain = Examples.Collected(20, 6);
        var own = new OwnDonor("1021", chain.Source.PerTime, chain.Source.Fit);
        var (all, hers) = (new Forecaster(chain).Forecast(Examples.Session(5, 12, 3)), new Forecaster(chain).Forecast(Examples.Session(4, 12, 3) with { Own = [own] }));

        hers.Stages.ShouldAllBe(stage => Examples.Apart(stage.Counts, all.At(stage.Stage)) < 0.01);
    }

    [Fact]
    public void What_is_uncertain_about_a_donor_of_her_own_widens_the_forecast()
    {
        var general = new Chain(EmbryoSource.Collected(new(9, 6), new(0.22)), Examples.AfterTransfer);
        Counts Embryos(OwnDonor own) => new Forecaster(general with { Own = [own] }).Forecast(new SessionSize(0, [], 6) { Own = [own] }).At(Stage.Transfers);
        var (sure, vague) = (Embryos(new("1021", new(20, 8), new(0.3))), Embryos(new("1021", new(20, 8, 3), new(0.3, 10))));

        vague.Mean.ShouldBe(sure.Mean, 0.01 * sure.Mean);
        vague.Spread.ShouldBeGreaterThan(1.5 * sure.Spread);
    }

    [Theory]
    [MemberData(nameof(Programmes))]
    public void A_simulated_season_comes_out_as_forecast(string name, Chain chain, SessionSize[] sessions)
    {
        var forecast = new Forecaster(chain).Forecast([.. sessions]);

        var played = new Simulation(chain, sessions, 20261012).Play(Seasons);

        played.Keys.ShouldBe([Stage.Embryos, Stage.Recipients, Stage.Transfers, Stage.Pregnant, Stage.Calvings, Stage.Alive, Stage.Heifers], ignoreOrder: true);
        foreach (var (stage, counts) in played)
        {
            Examples.Apart(counts, forecast.At(stage)).ShouldBeLessThan(Tolerance, $"{name}, {stage}");
        }
    }

    [Theory]
    [InlineData(50, 0.0005)]
    [InlineData(10, 0.0005)]
    [InlineData(3, 0.01)]
    public void Stand_ins_for_the_rates_come_close_to_exact_chances(double weight, double tolerance)
    {
        // Where every embryo finds a recipient, transfers are embryos, whose chances are exact over the whole season.
        var forecast = new Forecaster(Examples.Collected(weight)).Forecast(new SessionSize(5, [], 4));

        Examples.Apart(forecast.At(Stage.Transfers), forecast.At(Stage.Embryos)).ShouldBeLessThan(tolerance);
    }

    [Fact]
    public void Sessions_of_a_kind_are_the_same_however_they_are_written()
    {
        var forecaster = new Forecaster(Examples.Collected());

        Examples.Apart(
            forecaster.Forecast(Examples.Session(5, 12, 3)).At(Stage.Heifers),
            forecaster.Forecast(Examples.Session(5, 12), Examples.Session(5, 12, 2)).At(Stage.Heifers)).ShouldBeLessThan(1e-9);
    }

    [Fact]
    public void An_empty_tank_changes_nothing()
    {
        ImmutableArray<SessionSize> sessions = [Examples.Session(5, 12, 2), Examples.Session(3, 12)];
        var (without, empty) = (new Forecaster(Examples.Collected()).Forecast(sessions), new Forecaster(Examples.Collected().WithTank(0)).Forecast(sessions));

        empty.Stages.Zip(without.Stages).ShouldAllBe(pair => Examples.Apart(pair.First.Counts, pair.Second.Counts) == 0);
        empty.Thawed.ShouldBeNull();
    }

    [Fact]
    public void Straws_serve_only_recipients_that_find_no_fresh_embryo_and_more_straws_never_bring_fewer_calves()
    {
        ImmutableArray<SessionSize> sessions = [Examples.Session(5, 12, 2), Examples.Session(3, 12)];
        var without = new Forecaster(Examples.Collected()).Forecast(sessions);
        var before = without;
        foreach (var straws in new[] { 1, 4, 9, 36 })
        {
            var with = new Forecaster(Examples.Collected().WithTank(straws)).Forecast(sessions);

            with.At(Stage.Embryos).Mean.ShouldBe(without.At(Stage.Embryos).Mean);
            with.At(Stage.Transfers).Mean.ShouldBe(without.At(Stage.Transfers).Mean + with.Thawed!.Mean, 1e-4);
            with.Thawed.Most.ShouldBeLessThanOrEqualTo(straws);
            with.At(Stage.Heifers).Mean.ShouldBeGreaterThan(before.At(Stage.Heifers).Mean);
            (with.Idle + with.Thawed.Mean).ShouldBe(without.Idle, 1e-3);
            before = with;
        }

        // With a straw for everybody every accepted recipient has a transfer.
        before.At(Stage.Transfers).Mean.ShouldBe(before.At(Stage.Recipients).Mean, 1e-3);
    }

    [Fact]
    public void What_is_uncertain_about_a_rate_does_not_average_out_over_sessions()
    {
        var sure = new Forecaster(Examples.Collected(1e6)).Forecast(new SessionSize(5, [], 8)).At(Stage.Embryos);
        var vague = new Forecaster(Examples.Collected(10)).Forecast(new SessionSize(5, [], 8)).At(Stage.Embryos);

        vague.Mean.ShouldBe(sure.Mean, 1e-6);
        vague.Spread.ShouldBeGreaterThan(3 * sure.Spread);
    }

    [Fact]
    public void Every_loss_stands_at_its_own_stage()
    {
        var forecast = new Forecaster(Examples.Collected()).Forecast(Examples.Session(5, 12, 4));

        forecast.Stages.Select(stage => (stage.Stage, stage.Of)).ShouldBe(
        [
            (Stage.Collections, null), (Stage.Oocytes, null), (Stage.Embryos, Stage.Oocytes), (Stage.Recipients, null), (Stage.Transfers, null),
            (Stage.Pregnant, Stage.Transfers), (Stage.Calvings, Stage.Pregnant), (Stage.Alive, Stage.Calvings), (Stage.Heifers, Stage.Alive),
        ]);
        foreach (var stage in forecast.Stages.Where(stage => stage.Rate is not null))
        {
            stage.Counts.Mean.ShouldBe(forecast.At(stage.Of!.Value).Mean * stage.Rate!.Value.Share, 1e-6);
        }

        (forecast.At(Stage.Transfers).Mean + forecast.Surplus).ShouldBe(forecast.At(Stage.Embryos).Mean, 1e-3);
        (forecast.At(Stage.Transfers).Mean + forecast.Idle).ShouldBe(forecast.At(Stage.Recipients).Mean, 1e-3);
    }

    [Theory]
    [InlineData(6, Bottleneck.Recipients)]
    [InlineData(13, Bottleneck.Both)]
    [InlineData(30, Bottleneck.Embryos)]
    public void The_scarcer_of_embryos_and_recipients_is_named(int treated, Bottleneck limit) =>
        new Forecaster(Examples.Collected()).Forecast(Examples.Session(5, treated, 4)).Limit.ShouldBe(limit);

    [Fact]
    public void The_chance_of_what_is_wanted_is_the_chance_of_so_many_or_more()
    {
        var forecast = new Forecaster(Examples.Collected()).Forecast(Examples.Session(5, 14, 4));

        forecast.Chance.ShouldBe(forecast.At(Stage.Heifers).AtLeast(6));
        forecast.At(Stage.Heifers).AtLeast(forecast.CountedOn!.Value).ShouldBeGreaterThanOrEqualTo(0.8);
        forecast.At(Stage.Heifers).AtLeast(forecast.CountedOn.Value + 1).ShouldBeLessThan(0.8);
    }

    [Fact]
    public void Flushed_and_thawed_embryos_start_their_chains_where_they_come_in()
    {
        var flushed = new Forecaster(new(EmbryoSource.Flushed(new(5, 4)), Examples.AfterTransfer)).Forecast(Examples.Session(3, 20));
        var thawed = new Forecaster(new(EmbryoSource.Frozen(new(0.9, 40)), Examples.AfterTransfer)).Forecast(Examples.Session(20, 25));

        flushed.Stages.Select(stage => stage.Stage).Take(2).ShouldBe([Stage.Collections, Stage.Embryos]);
        flushed.At(Stage.Embryos).Mean.ShouldBe(15, 1e-8);
        flushed.At(Stage.Embryos).Spread.ShouldBe(Math.Sqrt(3) * 4, 1e-6);
        thawed.At(Stage.Embryos).Mean.ShouldBe(18, 1e-8);
        thawed.At(Stage.Embryos).Most.ShouldBe(20);
    }

    [Fact]
    public void Straws_thawed_over_several_sessions_are_those_of_one_shared_rate()
    {
        var forecast = new Forecaster(new(EmbryoSource.Frozen(new(0.9, 40)), [])).Forecast(new SessionSize(6, [], 4));

        Examples.Apart(forecast.At(Stage.Transfers), Counts.Of(24, new(0.9, 40))).ShouldBeLessThan(1e-6);
    }
}
