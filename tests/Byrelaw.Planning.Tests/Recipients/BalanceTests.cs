namespace Byrelaw.Planning.Tests.Recipients;

public sealed class BalanceTests
{
    [Fact]
    public void With_a_sure_treatment_the_best_number_is_that_of_the_newsboy()
    {
        // Where everybody treated is accepted, the best number is the smallest that suffices with the chance cu / (cu + co): the cost of one
        // too few over that of one too few and one too many (the newsvendor's ratio; Arrow, Harris and Marschak 1951, Econometrica 19:250; from memory).
        var embryos = Counts.Around(8, 20);

        Balance.Find(embryos, Rate.Always, 60, 240).Best.Animals.ShouldBe(embryos.Quantile(240.0 / 300));
    }

    [Fact]
    public void Dear_embryos_call_for_more_recipients_and_dear_recipients_for_fewer()
    {
        var (embryos, used) = (Counts.Around(8, 20), new Rate(0.8, 30));

        var even = Balance.Find(embryos, used, 100, 100).Best.Animals;
        Balance.Find(embryos, used, 100, 400).Best.Animals.ShouldBeGreaterThan(even);
        Balance.Find(embryos, used, 400, 100).Best.Animals.ShouldBeLessThan(even);
    }

    [Fact]
    public void More_animals_leave_fewer_embryos_over_and_more_recipients_idle()
    {
        var points = Balance.Find(Counts.Around(8, 20), new(0.8, 30), 70, 240).Points;

        points.Zip(points.Skip(1)).ShouldAllBe(pair =>
            pair.Second.Surplus < pair.First.Surplus && pair.Second.Idle > pair.First.Idle
            && pair.Second.ChanceOfSurplus <= pair.First.ChanceOfSurplus && pair.Second.ChanceOfIdle >= pair.First.ChanceOfIdle);
        points[0].Surplus.ShouldBe(8, 1e-9);
        points.ShouldAllBe(point => Math.Abs(point.InVain - ((240 * point.Surplus) + (70 * point.Idle))) < 1e-9);
    }

    [Fact]
    public void Freezing_saves_what_a_frozen_embryo_is_still_worth()
    {
        Balance.Frozen(240, 0.6, 40, 0.7).ShouldBe(240 - (0.6 * ((240 * 0.7) - 40)), 1e-9);
        Balance.Frozen(240, 0.6, 200, 0.7).ShouldBe(240, "freezing that costs more than it saves is left alone");
    }
}
