using Byrelaw.Judging.Truths;
using Byrelaw.Judging.Verdicts;
using static Byrelaw.Planning.Tests.Seasons.WithyBend;

namespace Byrelaw.Planning.Tests.Carrying;

/// <summary>Cows in milk, dry cows and heifers, each with a rate of her own.</summary>
public sealed class CarrierSharesTests
{
    private static readonly PlanStatements Apart = With(
        Share(AssumedQuantity.PregnantPerTransfer, Methods.Share(0.55, 40)) with { In = Carrier.Heifers },
        Share(AssumedQuantity.PregnantPerTransfer, Methods.Share(0.38, 20)) with { In = Carrier.DryCows });

    [Fact]
    public void Three_sorts_are_mixed_as_they_are()
    {
        // By hand: 0.5 x 45% + 0.2 x 38% + 0.3 x 55%, and the variances by the squares of the shares.
        var mixed = Pregnant(new(0.5, 0.2, 0.3));
        mixed.Share.ShouldBe(0.466, 1e-12);
        mixed.Variance.ShouldBe((0.25 * 0.45 * 0.55 / 81) + (0.04 * 0.38 * 0.62 / 21) + (0.09 * 0.55 * 0.45 / 41), 1e-12);
        Pregnant(CarrierShares.All(Carrier.DryCows)).ShouldBe(new Rate(0.38, 20));
        Pregnant(CarrierShares.All(Carrier.Cows)).ShouldBe(new Rate(0.45, 80));
    }

    [Fact]
    public void One_of_whom_it_is_not_known_which_she_is_counts_as_the_sort_that_does_worse()
    {
        Pregnant(new(0.5, 0, 0, 0.5)).Share.ShouldBe((0.5 * 0.45) + (0.5 * 0.38), 1e-12);
        Pregnant(new(0, 0, 0.5, 0, 0.5)).Share.ShouldBe((0.5 * 0.55) + (0.5 * 0.38), 1e-12);
        Pregnant(new(0, 0, 0, 1)).Share.ShouldBe(0.38, 1e-12);
    }

    [Fact]
    public void Dry_cows_without_a_line_of_their_own_are_cows()
    {
        var plans = With(Share(AssumedQuantity.PregnantPerTransfer, Methods.Share(0.41, 30)) with { In = Carrier.Cows });
        plans.Assume(AssumedQuantity.PregnantPerTransfer, EmbryoState.Fresh, Carrier.DryCows)!.Share!.Value.ShouldBe(0.41);
        ChainReading.Of(plans, Hopes, new(0.5, 0.5, 0)).Chain!.AfterTransfer[0].Rate.ShouldBe(new Rate(0.41, 30), "what is not known of one line is shared by both");
        var more = plans with { Assumptions = [.. plans.Assumptions, plans.Assumptions[^1] with { In = Carrier.DryCows, Share = Methods.Share(0.44) }] };
        more.Assume(AssumedQuantity.PregnantPerTransfer, EmbryoState.Fresh, Carrier.DryCows)!.Share!.Value.ShouldBe(0.44);
        more.Assume(AssumedQuantity.PregnantPerTransfer, EmbryoState.Fresh, Carrier.Cows)!.Share!.Value.ShouldBe(0.41);
    }

    [Fact]
    public void Animals_are_counted_as_what_they_are()
    {
        CarrierShares.Of(
        [
            (AnimalSort.Cow, Truth.False), (AnimalSort.Cow, Truth.True), (AnimalSort.Cow, Truth.Unknown), (AnimalSort.Heifer, Truth.True), (AnimalSort.NotKnown, Truth.False),
        ]).ShouldBe(new(0.2, 0.2, 0.2, 0.2, 0.2));
        CarrierShares.Of([]).ShouldBe(CarrierShares.All(Carrier.Cows));
        CarrierShares.Exactly(0.5).With(Carrier.DryCows, 10, 30).ShouldBe(new(0.375, 0.25, 0.375));
        CarrierShares.Exactly(0.5).With(Carrier.DryCows, 3, 0).ShouldBe(CarrierShares.All(Carrier.DryCows));
    }

    private static Rate Pregnant(CarrierShares carriers) => ChainReading.Of(Apart, Hopes, carriers).Chain!.AfterTransfer[0].Rate;
}
