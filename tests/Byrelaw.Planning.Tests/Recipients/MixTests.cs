namespace Byrelaw.Planning.Tests.Recipients;

public sealed class MixTests
{
    private static readonly UseChain Insert = UseChain.OfTreatment(Methods.Insert, day => day == 9);

    private static readonly UseChain NaturalHeat = UseChain.OfNaturalHeat(Methods.NaturalHeat, 4, null);

    /// <summary>20 inserts at hand, and 100 cows to watch besides.</summary>
    private static readonly ImmutableArray<Option> FewInserts = [new(Insert, 55, 20), new(NaturalHeat, 2, 100)];

    [Fact]
    public void One_method_does_where_it_is_enough_and_cheapest()
    {
        var mix = Mix.Find([new(Insert, 55, 60), new(NaturalHeat, 50, 60)], 20, 0.9, 60);

        mix.Treated.Single().Method.Name.ShouldBe("Insert");
        mix.Animals.ShouldBe(Enough.Of(20, 0.9, Insert.Used, 60).Animals!.Value);
        mix.Cost.ShouldBe(55 * mix.Animals);
    }

    [Fact]
    public void A_second_method_helps_out_where_one_alone_is_not_enough()
    {
        var mix = Mix.Find(FewInserts, 20, 0.8, 120);

        mix.IsEnough.ShouldBeTrue();
        mix.Treated.Select(treated => treated.Method.Name).ShouldBe(["Insert", "Natural heat"]);
        var together = mix.Treated.Select(treated => Counts.Of(treated.Animals, treated.Method.Used)).Aggregate((sum, next) => sum.Plus(next));
        together.AtLeast(20).ShouldBe(mix.Chance, 1e-9);
        mix.Treated.All(treated => Enough.Of(20, 0.8, treated.Method.Used, treated.Animals).Animals is null).ShouldBeTrue();
    }

    [Fact]
    public void Where_no_mix_is_enough_the_surest_is_told()
    {
        var mix = Mix.Find(FewInserts, 40, 0.9, 120);

        mix.IsEnough.ShouldBeFalse();
        mix.Animals.ShouldBe(120);
        mix.Treated[0].Animals.ShouldBe(20);
    }

    [Fact]
    public void No_other_number_is_both_enough_and_cheaper()
    {
        var mix = Mix.Find(FewInserts, 18, 0.8, 80);

        for (var inserts = 0; inserts <= 20; inserts++)
        {
            for (var watched = 0; watched <= 80 - inserts; watched++)
            {
                var chance = Counts.Of(inserts, Insert.Used).Plus(Counts.Of(watched, NaturalHeat.Used)).AtLeast(18);
                (chance >= 0.8 && (55 * inserts) + (2 * watched) < mix.Cost).ShouldBeFalse($"{inserts} and {watched}");
            }
        }
    }
}
