using static Byrelaw.Planning.Tests.Seasons.WithyBend;

namespace Byrelaw.Planning.Tests.Seasons;

public sealed class ChainReadingTests
{
    private static readonly CarrierShares NoHeifers = CarrierShares.Exactly(0);

    [Fact]
    public void Each_rate_keeps_the_evidence_of_the_file()
    {
        var reading = ChainReading.Of(Plans, Hopes, NoHeifers);

        reading.Missing.ShouldBeEmpty();
        reading.Chain!.Source.ShouldBe(EmbryoSource.Collected(new(9, 6), new(0.22, 50)));
        reading.Chain.AfterTransfer.ShouldBe(
        [
            new(Stage.Pregnant, new(0.45, 80)), new(Stage.Calvings, new(0.81, 40)), new(Stage.Alive, new(0.95)), new(Stage.Heifers, new(0.47)),
        ]);
        reading.Chain.Goal.ShouldBe(new Goal(Stage.Heifers, 6, 0.8));
    }

    [Fact]
    public void A_mean_keeps_its_weight_and_varies_at_least_by_chance()
    {
        var plans = Plans with { Assumptions = Plans.Assumptions.SetItem(0, Number(AssumedQuantity.OocytesPerCollection, 9, null) with { Weight = 20 }) };

        ChainReading.Of(plans, Hopes, NoHeifers).Chain!.Source.PerTime.ShouldBe(new Yield(9, 3, 20));
    }

    [Fact]
    public void A_rate_that_nobody_assumed_is_not_made_up()
    {
        var plans = Plans with { Assumptions = [.. Plans.Assumptions.Where(one => one.Quantity is not (AssumedQuantity.AliveAtADayOld or AssumedQuantity.HeiferPerCalf))] };

        var reading = ChainReading.Of(plans, Hopes, NoHeifers);

        reading.Missing.ShouldBe([AssumedQuantity.AliveAtADayOld, AssumedQuantity.HeiferPerCalf]);
        reading.Chain!.AfterTransfer[^1].To.ShouldBe(Stage.Calvings);
        reading.Chain.Goal.ShouldBeNull("what is wanted cannot be told");
    }

    [Fact]
    public void Without_oocytes_there_is_no_chain()
    {
        var reading = ChainReading.Of(Plans with { Assumptions = Plans.Assumptions.RemoveAt(0) }, Hopes, NoHeifers);

        reading.Chain.ShouldBeNull();
        reading.Missing.ShouldBe([AssumedQuantity.OocytesPerCollection]);
        SeasonPlanner.Plan(Inputs with { Plans = Plans with { Assumptions = Plans.Assumptions.RemoveAt(0) } }).Forecast.ShouldBeNull();
    }

    [Fact]
    public void Straws_go_by_the_rates_of_frozen_embryos_and_their_own_semen()
    {
        var frozen = Share(AssumedQuantity.PregnantPerTransfer, Methods.Share(0.35, 30)) with { State = EmbryoState.Frozen };
        var plans = With(frozen, Share(AssumedQuantity.HeiferPerCalf, Methods.Share(0.87, 60)) with { WithSexedSemen = true });

        var reading = ChainReading.Of(plans, Hopes with { InTheTank = 6, TankIsSexed = true }, NoHeifers);

        reading.Chain!.Tank!.Straws.ShouldBe(6);
        reading.Chain.Tank.AfterTransfer.ShouldBe(
        [
            new(Stage.Pregnant, new(0.35, 30), false), new(Stage.Calvings, new(0.81, 40), true), new(Stage.Alive, new(0.95), true), new(Stage.Heifers, new(0.87, 60), false),
        ]);
        reading.Used.ShouldContain(frozen);
        ChainReading.Of(plans, Hopes with { InTheTank = 6 }, NoHeifers).Chain!.Tank!.AfterTransfer[^1].ShouldBe(new(Stage.Heifers, new(0.47), true));
        ChainReading.Of(plans, Hopes with { Embryos = EmbryoOrigin.Frozen, InTheTank = 6 }, NoHeifers).Chain!.Tank.ShouldBeNull("these are all there is");
    }

    [Fact]
    public void Straws_of_which_nobody_assumed_what_becomes_of_them_are_not_counted()
    {
        ImmutableArray<Assumption> fresh = [.. Plans.Assumptions.Select(one => one.Quantity == AssumedQuantity.PregnantPerTransfer ? one with { State = EmbryoState.Fresh } : one)];

        var reading = ChainReading.Of(Plans with { Assumptions = fresh }, Hopes with { InTheTank = 6 }, NoHeifers);

        (reading.Chain!.Tank, reading.Missing.IsEmpty).ShouldBe((null, true));
        reading.MissingOfTank.ShouldBe([AssumedQuantity.PregnantPerTransfer]);
        reading.Used.ShouldBe(ChainReading.Of(Plans with { Assumptions = fresh }, Hopes, NoHeifers).Used);
    }

    [Fact]
    public void A_donors_own_line_counts_before_all_others()
    {
        var hers = Number(AssumedQuantity.OocytesPerCollection, 22, 8) with { Donor = "1021", Weight = 6 };

        ChainReading.Of(With(hers), Hopes, NoHeifers).Chain!.Own.ShouldBe([new("1021", new(22, 8, 6), new(0.22, 50))]);
        ChainReading.Of(With(hers), Hopes, NoHeifers).Used.ShouldContain(hers);
        ChainReading.Of(With(hers), Hopes, NoHeifers).Chain!.Source.ShouldBe(EmbryoSource.Collected(new(9, 6), new(0.22, 50)));
    }

    [Fact]
    public void Donors_who_all_have_the_general_line_make_the_general_forecast()
    {
        var plans = With([.. new[] { "1021", "1048", "1054" }.Select(donor => Plans.Assumptions[0] with { Donor = donor })]);

        ChainReading.Of(plans, Hopes, NoHeifers).Chain!.Own.ShouldBeEmpty();
        var (general, own) = (SeasonPlanner.Plan(Inputs), SeasonPlanner.Plan(Inputs with { Plans = plans }));
        own.Forecast!.Stages.Zip(general.Forecast!.Stages).ShouldAllBe(pair => Examples.Apart(pair.First.Counts, pair.Second.Counts) == 0);
    }

    [Fact]
    public void Heifers_and_cows_are_mixed_as_the_recipients_are()
    {
        var plans = With(Share(AssumedQuantity.PregnantPerTransfer, Methods.Share(0.55, 40)) with { In = Carrier.Heifers });

        Pregnant(0).ShouldBe(new Rate(0.45, 80));
        Pregnant(1).ShouldBe(new Rate(0.55, 40));
        Pregnant(0.25).Share.ShouldBe((0.75 * 0.45) + (0.25 * 0.55), 1e-12);

        Rate Pregnant(double heifers) => ChainReading.Of(plans, Hopes, CarrierShares.Exactly(heifers)).Chain!.AfterTransfer[0].Rate;
    }

    [Theory]
    [InlineData(0.55, 0.45)]
    [InlineData(0.35, 0.35)]
    public void Recipients_of_whom_it_is_not_known_whether_they_have_calved_count_as_the_sort_that_does_worse(double inHeifers, double expected)
    {
        // Cows: 45%. Nobody's calvings are on record, so that every one may be a cow or a heifer; then a quarter surely is a heifer.
        var plans = With(Share(AssumedQuantity.PregnantPerTransfer, Methods.Share(inHeifers, 40)) with { In = Carrier.Heifers });

        ChainReading.Of(plans, Hopes, new(0, 0, 0, 0, 1)).Chain!.AfterTransfer[0].Rate.Share.ShouldBe(expected, 1e-12);
        ChainReading.Of(plans, Hopes, new(0, 0, 0.25, 0, 0.75)).Chain!.AfterTransfer[0].Rate.Share.ShouldBe((0.25 * inHeifers) + (0.75 * expected), 1e-12);
    }

    [Fact]
    public void Frozen_embryos_have_their_own_rates()
    {
        var plans = With(Share(AssumedQuantity.PregnantPerTransfer, Methods.Share(0.38, 60)) with { State = EmbryoState.Frozen });

        var frozen = ChainReading.Of(plans, Hopes with { Embryos = EmbryoOrigin.Frozen }, NoHeifers).Chain!;

        frozen.AfterTransfer[0].Rate.ShouldBe(new Rate(0.38, 60));
        frozen.Source.Kind.ShouldBe(EmbryoSourceKind.Frozen);
        ChainReading.Of(plans, Hopes, NoHeifers).Chain!.AfterTransfer[0].Rate.ShouldBe(new Rate(0.45, 80));
    }

    [Fact]
    public void Sexed_semen_changes_embryos_and_calves()
    {
        var plans = With(
            Share(AssumedQuantity.EmbryosPerOocyte, Methods.Share(0.17, 20)) with { WithSexedSemen = true },
            Share(AssumedQuantity.HeiferPerCalf, Methods.Share(0.9, 30)) with { WithSexedSemen = true });

        var heifers = ChainReading.Of(plans, Hopes with { Semen = Semen.SexedFemale }, NoHeifers).Chain!;
        var bulls = ChainReading.Of(plans, Hopes with { Semen = Semen.SexedMale }, NoHeifers).Chain!;

        heifers.Source.Fit.ShouldBe(new Rate(0.17, 20));
        heifers.AfterTransfer[^1].Rate.ShouldBe(new Rate(0.9, 30));
        bulls.AfterTransfer[^1].Rate.Share.ShouldBe(0.1, 1e-12);
        ChainReading.Of(plans, Hopes, NoHeifers).Chain!.AfterTransfer[^1].Rate.ShouldBe(new Rate(0.47));
    }

    [Fact]
    public void What_is_kept_to_calving_may_be_said_in_two_steps()
    {
        var plans = Plans with
        {
            Assumptions =
            [
                .. Plans.Assumptions.Where(one => one.Quantity != AssumedQuantity.KeptFromFirstCheckToCalving),
                Share(AssumedQuantity.KeptFromFirstToSecondCheck, Methods.Share(0.86, 40)), Share(AssumedQuantity.KeptFromSecondCheckToCalving, Methods.Share(0.94, 40)),
            ],
        };

        ChainReading.Of(plans, Hopes, NoHeifers).Chain!.AfterTransfer.Select(step => step.To)
            .ShouldBe([Stage.Pregnant, Stage.Kept, Stage.Calvings, Stage.Alive, Stage.Heifers]);
    }
}
