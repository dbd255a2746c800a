using Byrelaw.Judging.Tuning;

namespace Byrelaw.Judging.Tests.Tuning;

public sealed class InCommonTests
{
    /// <summary>R. A. Fisher, The Design of Experiments (1935), chapter 2, the lady tasting tea: of 8 cups 4 had the milk first. All four found
    /// by lot: 1 in 70. Three of them or all: 17 in 70.</summary>
    [Theory]
    [InlineData(4, 1.0 / 70)]
    [InlineData(3, 17.0 / 70)]
    [InlineData(0, 1.0)]
    public void The_chance_by_lot_is_that_of_Fishers_tea_cups(int found, double chance) =>
        InCommon.ByLot(found, drawn: 4, having: 4, all: 8).ShouldBe(chance, 1e-12);

    [Fact]
    public void Seven_heifers_of_nine_are_told_where_twelve_of_eighty_are_heifers()
    {
        var common = InCommon.Of(Animals(7, 9), Animals(12, 80)).ShouldHaveSingleItem();
        (common.Trait.Value, common.InGroup, common.GroupSize, common.InAll, common.All).ShouldBe(("heifer", 7, 9, 12, 80));

        // By hand: (C(12,7) C(68,2) + C(12,8) C(68,1) + C(12,9)) / C(80,9), times the one trait looked at.
        common.Chance.ShouldBe(((792.0 * 2278) + (495.0 * 68) + 220) / 231_900_297_200, 1e-15);
    }

    [Fact]
    public void What_most_of_the_list_has_is_not_told_of_a_few_of_it() => InCommon.Of(Animals(9, 9), Animals(60, 80)).ShouldBeEmpty();

    [Fact]
    public void What_only_a_few_of_the_group_have_is_not_told() => InCommon.Of(Animals(3, 9), Animals(3, 80)).ShouldBeEmpty();

    private static List<IReadOnlySet<Trait>> Animals(int heifers, int of) =>
        [.. Enumerable.Range(0, of).Select(animal => animal < heifers ? new HashSet<Trait> { new(TraitKind.Sort, "", "heifer") } : [])];
}
