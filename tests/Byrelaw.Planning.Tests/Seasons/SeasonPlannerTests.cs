using static Byrelaw.Planning.Tests.Seasons.WithyBend;

namespace Byrelaw.Planning.Tests.Seasons;

public sealed class SeasonPlannerTests
{
    private static readonly SeasonNumbers Season = SeasonPlanner.Plan(Inputs);

    [Fact]
    public void The_planned_number_balances_idle_recipients_and_surplus_embryos()
    {
        // An embryo costs 350 / (9 x 22%) + 90, an accepted recipient 55 / 80%.
        Season.InVain!.Surplus!.Value.ShouldBe((350 / (9 * 0.22)) + 90, 1e-9);
        Season.InVain.Idle!.Value.ShouldBe(55 / 0.8, 1e-9);
        Season.Sessions.Single().Treated.Single().Animals.ShouldBe(Season.Balance!.Best.Animals);
        Season.Balance.Points.ShouldAllBe(point => point.InVain >= Season.Balance.Best.InVain);
    }

    [Fact]
    public void Each_method_is_told_with_its_losses_its_number_and_its_cost()
    {
        Season.Methods.Select(method => method.Option.Chain.Method).ShouldBe(["Insert", "Prostaglandin once", "Natural heat"]);
        Season.Methods.Select(method => method.TakesWhoeverComes).ShouldBe([false, false, true]);
        Season.Methods[0].Option.CostPerAccepted!.Value.ShouldBe(55 / 0.8, 1e-9);
        Season.Methods[1].Second.ShouldNotBeNull();
        Season.Methods[2].Option.CostPerAccepted.ShouldBeNull("nobody said what watching costs");
        foreach (var method in Season.Methods)
        {
            method.Enough!.Accepted.ShouldBe(Season.Forecast!.Sessions[0].Embryos.Quantile(0.5));
            Counts.Of(method.Enough.Animals!.Value, method.Option.Preparing.Used).AtLeast(method.Enough.Accepted).ShouldBeGreaterThanOrEqualTo(0.8);
        }
    }

    [Fact]
    public void What_is_needed_is_enough_and_one_fewer_is_not()
    {
        Season.Needed.Select(needed => needed.Of).ShouldBe([Further.Session, Further.Donor, Further.Recipient, Further.DonorWithRecipients]);
        foreach (var needed in Season.Needed.Where(needed => needed.More > 0))
        {
            var forecaster = new Forecaster(Season.Reading.Chain!);
            needed.Chance.ShouldBeGreaterThanOrEqualTo(0.8);
            forecaster.Forecast(MoreSessions.With(Season.Sessions, needed.Of, needed.More!.Value - 1)).Chance!.Value.ShouldBeLessThan(0.8);
        }

        // 6 sessions and 8 donors at most, 4 and 5 of them planned: 2 and 3 more are to be had.
        (Season.Needed[0].Room, Season.Needed[1].Room).ShouldBe((2, 3));
        Season.Needed[0].More.ShouldNotBeNull();
        Season.Needed[2].More.ShouldBeNull("more recipients alone do not make more embryos");
    }

    [Fact]
    public void One_more_of_what_is_scarce_is_worth_most()
    {
        Season.Worth.Select(worth => worth.OneMore).ShouldBe([Further.Session, Further.Donor, Further.Recipient, Further.DonorWithRecipients]);
        Season.Worth.ShouldAllBe(worth => worth.More > 0 && worth.Chance > 0);
        Season.Forecast!.Limit.ShouldBe(Bottleneck.Embryos);
        Season.Worth[1].More.ShouldBeGreaterThan(Season.Worth[2].More);
    }

    [Fact]
    public void Wants_that_no_plan_can_reach_are_told_with_how_far_one_gets()
    {
        var season = SeasonPlanner.Plan(Inputs with { Aims = Hopes with { Wants = Hopes.Wants! with { Count = 40 } } });

        season.CanBeReached.ShouldBe(false);
        season.SurestChance!.Value.ShouldBeLessThan(0.8);
        season.Farthest!.CountedOn(0.8).ShouldBeInRange(1, 39);
        season.Needed.ShouldAllBe(needed => !needed.CanBeHad);
        Season.CanBeReached.ShouldBe(true);
    }

    [Fact]
    public void A_farm_without_animals_has_no_transfers()
    {
        var season = SeasonPlanner.Plan(Inputs with { Animals = 0 });

        season.Forecast!.At(Stage.Transfers).Most.ShouldBe(0);
        season.CanBeReached.ShouldBe(false);
    }

    [Fact]
    public void The_numbers_that_the_programme_says_itself_are_planned_with()
    {
        var season = SeasonPlanner.Plan(Inputs with { Aims = Hopes with { Recipients = [new("Insert", 24, default)] } });

        season.IsByTheProgramme.ShouldBeTrue();
        season.Sessions.Single().Treated.Single().Animals.ShouldBe(24);
        season.Methods.Single().Option.Chain.Method.ShouldBe("Insert");
    }

    [Fact]
    public void Where_there_are_fewer_animals_than_would_balance_all_of_them_are_planned_with()
    {
        var season = SeasonPlanner.Plan(Inputs with { Animals = 14, Aims = Hopes with { Recipients = [new("Prostaglandin once", null, default), new("Insert", null, default)] } });

        season.Balance!.Best.Animals.ShouldBeGreaterThan(14);
        season.Sessions.Single().Treated.Single().ShouldBe(new Treated(season.Methods[0].Option.Preparing, 14));
    }

    [Fact]
    public void Every_price_of_the_file_stands_in_the_budget()
    {
        var season = SeasonPlanner.Plan(Inputs);

        season.Budget!.Currency.ShouldBe("NZD");
        season.Budget.Limit.ShouldBe(30000);
        season.Budget.Lines.Select(line => (line.Charge.Per, line.Charge.For)).ShouldBe(
        [
            (CostUnit.AnimalTreated, "Insert"), (CostUnit.Collection, null), (CostUnit.Embryo, null), (CostUnit.Transfer, null), (CostUnit.Visit, null),
        ]);
        season.Budget.Lines[0].Number.ShouldBe(4 * season.Sessions[0].Animals);
        season.Budget.Lines[4].Number.ShouldBe(8);
        season.Budget.Low.ShouldBeLessThan(season.Budget.Total);
        season.Budget.High.ShouldBeGreaterThan(season.Budget.Total);
    }

    [Fact]
    public void Tasks_samples_keep_and_donors_treatments_are_paid_for()
    {
        var task = new PlanTask { Name = "Sample the mob", Due = null!, Cost = new(Nzd(18), true), Span = default };
        var season = SeasonPlanner.Plan(Inputs with
        {
            Plans = With(Number(AssumedQuantity.DaysOfKeepPerRecipient, 60, null)) with
            {
                Methods = [.. Plans.Methods, new() { Name = "Donors", IsForDonors = true, Cost = Nzd(80), Span = default }],
                Costs = [Cost(CostUnit.Sample, 12), Cost(CostUnit.DayOfKeep, 2)],
            },
            Aims = Hopes with { DonorMethod = "Donors" },
            Samples = 20,
            Tasks = [new(task, 31)],
        });

        var treated = 4 * season.Sessions[0].Animals;
        season.Budget!.Lines.Select(line => (line.Charge.For, line.Charge.Price, line.Number)).ShouldBe(
        [
            ("Insert", 55, treated), ("Donors", 80, 20), (null, 12, 20), (null, 2, 60.0 * treated), ("Sample the mob", 18, 31),
        ]);
    }

    [Fact]
    public void An_outlook_for_a_visit_is_the_plans_forecast_and_cost()
    {
        var outlook = SeasonPlanner.Outlook(Inputs)!;

        outlook.Forecast.At(Stage.Heifers).Mean.ShouldBe(Season.Forecast!.At(Stage.Heifers).Mean, 1e-12);
        outlook.Cost.ShouldBe(Season.Budget!.Total, 1e-9);
    }

    [Fact]
    public void An_all_in_price_stands_for_what_an_embryo_left_over_is_worth()
    {
        var season = SeasonPlanner.Plan(Inputs with { Plans = Plans with { Costs = [Cost(CostUnit.EmbryoTransferred, 400)] } });

        season.InVain!.Surplus.ShouldBe(400);
        season.InVain.ByMoney.ShouldBeTrue();
    }

    [Fact]
    public void Embryos_left_over_are_frozen_where_freezing_has_a_price()
    {
        var fit = With(Share(AssumedQuantity.EmbryosFitToFreeze, Recipients.Methods.Share(0.6, 20)), Share(AssumedQuantity.PregnantPerTransfer, Recipients.Methods.Share(0.36, 30)) with { State = EmbryoState.Frozen });

        var thrown = SeasonPlanner.Plan(Inputs with { Plans = fit });
        var frozen = SeasonPlanner.Plan(Inputs with { Plans = fit with { Costs = [.. fit.Costs, Cost(CostUnit.EmbryoFrozen, 30)] } });

        var made = thrown.InVain!.Surplus!.Value;
        frozen.InVain!.Surplus!.Value.ShouldBe(made - (0.6 * ((made * 0.8) - 30)), 1e-9);
        frozen.Balance!.Best.Animals.ShouldBeLessThan(thrown.Balance!.Best.Animals);
        frozen.Budget!.Lines.Single(line => line.Charge.Per == CostUnit.EmbryoFrozen).Number.ShouldBe(0.6 * frozen.Forecast!.Surplus, 1e-9);
    }

    [Fact]
    public void A_price_that_is_not_given_is_not_a_price_of_nothing()
    {
        // Only the treatment has a price, or only what it takes to have an embryo: the other is not free, so money weighs neither.
        var none = SeasonPlanner.Plan(Inputs with { Plans = Plans with { Costs = [], Methods = [Recipients.Methods.Insert] }, Aims = Hopes with { Budget = null } });
        var treatment = SeasonPlanner.Plan(Inputs with { Plans = Plans with { Costs = [Cost(CostUnit.AnimalTreated, 55)], Methods = [Recipients.Methods.Insert] } });
        var embryos = SeasonPlanner.Plan(Inputs with { Plans = Plans with { Methods = [Recipients.Methods.Insert] } });

        foreach (var season in new[] { treatment, embryos })
        {
            season.InVain!.ByMoney.ShouldBeFalse();
            season.Sessions.Single().Treated.Single().Animals.ShouldBe(none.Sessions.Single().Treated.Single().Animals);
        }

        treatment.InVain!.NotPriced.ShouldBe([new(CostUnit.Collection), new(CostUnit.Embryo)]);
        embryos.InVain!.NotPriced.ShouldBe([new(CostUnit.AnimalTreated, "Insert")]);
        treatment.Budget!.NotPriced.ShouldBe([new(CostUnit.Collection), new(CostUnit.Embryo), new(CostUnit.Transfer), new(CostUnit.Visit)]);
        treatment.Budget.Total.ShouldBe(4 * 55 * treatment.Sessions[0].Animals, 1e-9);
        embryos.Budget!.NotPriced.ShouldBe([new(CostUnit.AnimalTreated, "Insert")]);
        Season.Budget!.NotPriced.ShouldBeEmpty();
    }

    [Fact]
    public void A_price_of_nothing_is_a_price()
    {
        var season = SeasonPlanner.Plan(Inputs with { Plans = Plans with { Costs = [.. Plans.Costs, Cost(CostUnit.AnimalTreated, 0)], Methods = [Recipients.Methods.Insert] } });

        (season.InVain!.Idle, season.InVain.ByMoney).ShouldBe((0, true));
        season.Budget!.NotPriced.ShouldBeEmpty();
    }

    [Fact]
    public void A_day_of_keep_costs_nothing_only_where_somebody_said_how_many_days()
    {
        var priced = Plans with { Costs = [.. Plans.Costs, Cost(CostUnit.DayOfKeep, 2)] };
        var season = SeasonPlanner.Plan(Inputs with { Plans = priced });

        season.Budget!.NotPriced.ShouldBe([new(CostUnit.DayOfKeep)]);
        season.Budget.Lines.ShouldNotContain(line => line.Charge.Per == CostUnit.DayOfKeep);
        season.InVain!.Idle!.Value.ShouldBe(55 / 0.8, 1e-9);
    }

    [Fact]
    public void Without_prices_one_idle_recipient_counts_as_much_as_one_surplus_embryo()
    {
        var plans = Plans with { Costs = [], Methods = [Recipients.Methods.Insert] };

        var season = SeasonPlanner.Plan(Inputs with { Plans = plans, Aims = Hopes with { Budget = null } });

        (season.InVain!.Idle, season.InVain.Surplus, season.InVain.ByMoney).ShouldBe((null, null, false));
        season.Budget.ShouldBeNull();
    }
}
