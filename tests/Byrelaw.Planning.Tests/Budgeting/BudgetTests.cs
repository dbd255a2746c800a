using Byrelaw.Planning.Budgeting;

namespace Byrelaw.Planning.Tests.Budgeting;

public sealed class BudgetTests
{
    private static readonly ImmutableArray<Charge> Charges =
    [
        new(CostUnit.Programme, null, 500, 0, null),
        new(CostUnit.AnimalTreated, "Insert", 55, 0, 48),
        new(CostUnit.Collection, null, 350, 0, null),
        new(CostUnit.Embryo, null, 90, 0, null),
        new(CostUnit.EmbryoFrozen, null, 35, 0, null),
        new(CostUnit.Transfer, null, 45, 0, null),
        new(CostUnit.Visit, null, 400, 0, 4),
        new(CostUnit.Pregnancy, null, 60, 0, null),
    ];

    private static readonly Forecast Season = new Forecaster(Examples.Collected()).Forecast(Examples.Session(5, 12, 4));

    [Fact]
    public void Every_line_is_its_price_times_the_number_expected()
    {
        var budget = Budgeter.AddUp(Season, Charges, new(0.6), "NZD", 20000);

        budget.Lines.Select(line => Math.Round(line.Number, 3)).ShouldBe(
        [
            1, 48, 20, 39.6, Math.Round(0.6 * Season.Surplus, 3), Math.Round(Season.At(Stage.Transfers).Mean, 3), 4, Math.Round(Season.At(Stage.Pregnant).Mean, 3),
        ]);
        budget.Fixed.ShouldBe(500 + (55 * 48) + (350 * 20) + (400 * 4), 1e-9);
        budget.Total.ShouldBe(budget.Lines.Sum(line => line.Charge.Price * line.Number), 1e-9);
        budget.Each.Transfer!.Value.ShouldBe(budget.Total / Season.At(Stage.Transfers).Mean, 1e-9);
        budget.Each.LiveHeifer!.Value.ShouldBe(budget.Total / Season.At(Stage.Heifers).Mean, 1e-9);
    }

    [Fact]
    public void A_total_of_fixed_numbers_has_no_range()
    {
        var budget = Budgeter.AddUp(Season, [Charges[0], Charges[1], Charges[2], Charges[6]], null, "NZD", 12000);

        budget.Total.ShouldBe(500 + (55 * 48) + (350 * 20) + 1600);
        (budget.Low, budget.High).ShouldBe((budget.Total, budget.Total));
        budget.ChanceWithinLimit.ShouldBe(1);
    }

    [Fact]
    public void Money_for_one_thing_has_the_range_of_that_thing()
    {
        var budget = Budgeter.AddUp(Season, [new(CostUnit.EmbryoTransferred, null, 400, 0, null)], null, "NZD", 14200);

        var transfers = Season.At(Stage.Transfers);
        budget.Low.ShouldBe(400 * transfers.Quantile(0.1), 400);
        budget.High.ShouldBe(400 * transfers.Quantile(0.9), 400);
        budget.ChanceWithinLimit!.Value.ShouldBe(1 - transfers.AtLeast(36), 0.02);
    }

    [Fact]
    public void The_range_is_that_of_simulated_seasons()
    {
        var budget = Budgeter.AddUp(Season, Charges, new(1), "NZD", 17500);

        var totals = new Simulation(Examples.Collected(), [Examples.Session(5, 12, 4)], 7).Seasons(20_000)
            .Select(season => budget.Fixed + (90 * season[Stage.Embryos]) + (35 * (season[Stage.Embryos] - season[Stage.Transfers]))
                + (45 * season[Stage.Transfers]) + (60 * season[Stage.Pregnant]))
            .Order().ToArray();

        Agrees(budget, totals);
    }

    [Fact]
    public void The_range_with_straws_is_that_of_simulated_seasons()
    {
        var chain = Examples.Collected().WithTank(20);
        ImmutableArray<Charge> charges = [new(CostUnit.Embryo, null, 90, 0, null), new(CostUnit.Transfer, null, 145, 0, null), new(CostUnit.Pregnancy, null, 160, 0, null), new(CostUnit.Visit, null, 400, 0, 30)];
        var budget = Budgeter.AddUp(new Forecaster(chain).Forecast(Examples.Session(5, 14, 3)), charges, null, "NZD", 17500);

        Agrees(budget, [.. new Simulation(chain, [Examples.Session(5, 14, 3)], 7).Seasons(20_000)
            .Select(season => budget.Fixed + (90 * season[Stage.Embryos]) + (145 * season[Stage.Transfers]) + (160 * season[Stage.Pregnant])).Order()]);
    }

    // Few donors and many recipients: the rarest case of the rates has more transfers than all cases taken together.
    [Theory]
    [InlineData(0)]
    [InlineData(6)]
    public void Seasons_of_every_size_are_added_up(int straws)
    {
        foreach (var (donors, animals) in from donors in Enumerable.Range(0, 6) from animals in new[] { 0, 1, 7, 30, 60 } select (donors, animals))
        {
            var budget = Budgeter.AddUp(new Forecaster(Examples.Collected().WithTank(straws)).Forecast(Examples.Session(donors, animals)), Charges, new(0.6), "NZD", 20000);

            budget.Total.ShouldBe(budget.Lines.Sum(line => line.Charge.Price * line.Number), 1e-9);
            (budget.Low <= budget.Total && budget.Total <= budget.High).ShouldBeTrue($"{donors} donors and {animals} animals");
        }
    }

    // Of 20,000 seasons a quantile strays by less than two hundredths of the range.
    private static void Agrees(Budget budget, double[] totals)
    {
        var tolerance = 0.02 * (budget.High - budget.Low);
        totals.Average().ShouldBe(budget.Total, tolerance);
        totals[2_000].ShouldBe(budget.Low, tolerance);
        totals[18_000].ShouldBe(budget.High, tolerance);
        ((double)totals.Count(total => total <= 17500) / totals.Length).ShouldBe(budget.ChanceWithinLimit!.Value, 0.012);
    }

    [Fact]
    public void A_price_that_is_not_sure_widens_the_range()
    {
        var sure = Budgeter.AddUp(Season, Charges, null, "NZD", null);
        var unsure = Budgeter.AddUp(Season, Charges.SetItem(2, Charges[2] with { Spread = 100 }), null, "NZD", null);

        unsure.Total.ShouldBe(sure.Total);
        // 20 collections at 350 ± 100 alone: ± 2000, and 10 and 90 in a hundred lie 1.2816 standard deviations out.
        (unsure.High - unsure.Low).ShouldBeGreaterThan(2 * 1.2816 * 2000);
        (sure.High - sure.Low).ShouldBeLessThan(2 * 1.2816 * 2000);
        unsure.ChanceWithinLimit.ShouldBeNull();
    }

    [Fact]
    public void Where_a_price_is_missing_totals_are_what_it_comes_to_at_least_and_no_chance_is_given()
    {
        var whole = Budgeter.AddUp(Season, Charges, null, "NZD", 20000);
        var without = Budgeter.AddUp(Season, Charges.RemoveAt(3), null, "NZD", 20000, new NotPriced(CostUnit.Embryo));

        (whole.IsAtLeast, whole.ChanceWithinLimit is null).ShouldBe((false, false));
        (without.IsAtLeast, without.ChanceWithinLimit, without.Limit).ShouldBe((true, null, 20000));
        without.Total.ShouldBe(whole.Total - (90 * Season.At(Stage.Embryos).Mean), 1e-6);
    }

    [Fact]
    public void Whoever_shares_the_costs_pays_their_part_of_each_kind_and_all_of_it_together()
    {
        var budget = Budgeter.AddUp(Season, Charges, null, "NZD", null);
        CostsShared all = new(null, [new("owner", 0.5), new("sharemilker", 0.5)], default), treatments = new(SharedCosts.Treatments, [new("owner", 1)], default);

        var paid = PaidBy.Of([all, treatments], budget);

        paid.Select(one => one.Who).ShouldBe(["owner", "sharemilker"]);
        paid.Sum(one => one.Amount).ShouldBe(budget.Total, 1e-6);
        paid[1].Amount.ShouldBe((budget.Total - (55 * 48)) / 2, 1e-6);
        PaidBy.Of([treatments], budget)[^1].ShouldBe(new(null, budget.Total - (55 * 48)));
        PaidBy.Of([], budget).ShouldBeEmpty();
    }

    [Fact]
    public void A_lost_cycle_is_told_but_not_spent()
    {
        var budget = Budgeter.AddUp(Season, [.. Charges, new(CostUnit.LostCycle, null, 80, 0, null)], null, "NZD", null);

        budget.Total.ShouldBe(Budgeter.AddUp(Season, Charges, null, "NZD", null).Total);
        budget.Lost!.Number.ShouldBe(Season.At(Stage.Recipients).Mean - Season.At(Stage.Pregnant).Mean, 1e-3);
    }
}
