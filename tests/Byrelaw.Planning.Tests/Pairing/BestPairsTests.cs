using Byrelaw.Planning.Pairing;
using CsCheck;

namespace Byrelaw.Planning.Tests.Pairing;

public sealed class BestPairsTests
{
    private static readonly Gen<PairWorth?> Worth = Gen.Select(Gen.Int[0, 3], Gen.Int[0, 1], Gen.Int[0, 1], Gen.Int[0, 1], Gen.Int[0, 2], Gen.Int[0, 2])
        .Select((fits, wished, fresh, kept, wanted, points) => fits == 0 ? (PairWorth?)null : new PairWorth(wished, fresh, kept, wanted, points));

    private static readonly Gen<PairWorth?[][]> Farms = Gen.Select(Gen.Int[0, 6], Gen.Int[0, 6]).SelectMany((embryos, recipients) => Worth.Array[recipients].Array[embryos]);

    [Fact]
    public void They_are_what_trying_every_pairing_finds() => Farms.Hold(worth =>
    {
        var recipients = worth.Length == 0 ? 0 : worth[0].Length;
        var best = BestPairs.Of(worth, recipients);
        var at = Enumerable.Range(0, worth.Length).Select(best.RecipientOf).ToArray();
        at.ShouldBe(AllPairings.Best(worth, recipients));
        for (var embryo = 0; embryo < worth.Length; embryo++)
        {
            if (at[embryo] >= 0)
            {
                var all = AllPairings.Best(worth, recipients, besides: (embryo, at[embryo]));
                var (lost, instead) = best.Without(embryo);
                long[] parts = [lost.Wished, lost.Fresh, lost.Kept, lost.Wanted, lost.Points];
                parts.ShouldBe([.. AllPairings.Sum(at, worth).Zip(AllPairings.Sum(all, worth)).Select(pair => pair.First - pair.Second)], "what is lost without the pair");
                (instead < 0 || worth[instead][at[embryo]] is not null).ShouldBeTrue("who comes instead fits her");
            }
        }
    }, count: 120);

    [Fact]
    public void Where_all_are_worth_the_same_each_embryo_has_the_smallest_number_that_is_left()
    {
        PairWorth?[][] worth = [.. Enumerable.Repeat(Enumerable.Repeat((PairWorth?)new PairWorth(0, 1, 0, 420_000, 0), 5).ToArray(), 3)];
        var best = BestPairs.Of(worth, 5);
        Enumerable.Range(0, 3).Select(best.RecipientOf).ShouldBe([0, 1, 2]);
        best.Without(0).ShouldBe((PairWorth.None, 1));
    }

    [Fact]
    public void The_order_of_the_embryos_changes_nothing_but_which_of_equals_comes_first() => Farms.Hold(worth =>
    {
        var recipients = worth.Length == 0 ? 0 : worth[0].Length;
        var (best, turned) = (BestPairs.Of(worth, recipients), BestPairs.Of([.. worth.Reverse()], recipients));
        Total(worth, best).ShouldBe(Total([.. worth.Reverse()], turned));
    }, count: 100);

    private static PairWorth Total(PairWorth?[][] worth, BestPairs best) =>
        Enumerable.Range(0, worth.Length).Where(embryo => best.RecipientOf(embryo) >= 0).Select(embryo => worth[embryo][best.RecipientOf(embryo)]!.Value).Aggregate(PairWorth.None, (sum, one) => sum + one);
}
