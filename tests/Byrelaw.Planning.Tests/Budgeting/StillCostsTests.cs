using Byrelaw.Planning.Budgeting;

namespace Byrelaw.Planning.Tests.Budgeting;

/// <summary>What stopping still costs, day by day.</summary>
public sealed class StillCostsTests
{
    // Two donors give 10 eggs each, a quarter of which become embryos: 5 to expect.
    private const string Prices = """
        assume oocytes per collection 10, spread 5
          source "invented"
        assume embryos per oocyte 25%, weight 50
        assume embryos fit to freeze 60%, weight 20
        assume cost per embryo 90 NZD
        assume cost per embryo frozen 30 NZD
        assume cost per visit 400 NZD
        assume cost per lost cycle 120 NZD

        """;

    private static Plan Planned(string prices, string again = "")
    {
        var farm = new WrittenPlan
        {
            Cows = 5,
            Programme = $"collection on 2026-09-07{again}\ntransfer 8 days after collection, over 2 days\ndate first treatment 8 days before collection\nprepare 2 recipients by \"Progesterone insert\"",
            Lists = "\n  choose donors from \"4\", \"5\", judged on collection\n  choose treatment from females, judged on first treatment\n  choose recipients from females, judged from first transfer to final transfer\n",
            More = prices,
            Events = [.. Enumerable.Range(1, 3).SelectMany(cow => new[] { $"2026-05-01,{cow},calving,,", $"2026-08-01,{cow},serum copper,20,umol/L" })],
        };
        var rulebook = farm.Rulebook;
        return Planner.Plan(rulebook, farm.Herd(rulebook), new(2026, 8, 1));
    }

    [Fact]
    public void Before_anything_is_given_stopping_costs_nothing_and_later_what_cannot_be_undone()
    {
        var plan = Planned(Prices);
        var (start, collection) = (plan.Sessions[0].Named[0].Start, new LocalDate(2026, 9, 7));
        StillCosts.Of(plan, 1, start.PlusDays(-2)).ShouldBe(new StillCosts(new(0, "NZD"), true, null));

        // On the day itself the team comes, and two animals are treated; six days later the laboratory has made the embryos.
        plan.Sessions[0].Named.Length.ShouldBe(2);
        StillCosts.Of(plan, 1, collection).ShouldBe(new StillCosts(new(400, "NZD"), true, new(240, "NZD")));
        var late = StillCosts.Of(plan, 1, collection.PlusDays(6))!;
        late.Money.Amount.ShouldBe(5 * (90 + (0.6 * 30)), 1e-6);
        late.Lost.ShouldBe(new Money(240, "NZD"));
        StillCosts.Of(plan, 2, collection).ShouldBeNull();
    }

    [Fact]
    public void Told_of_one_session_it_is_that_ones_embryos_that_are_paid_for()
    {
        var plan = Planned(Prices, ", 2 times every 14 days");
        var day = new LocalDate(2026, 9, 28);
        var second = OneSession.Of(plan, 2)!;
        StillCosts.Of(second, 2, day).ShouldBe(StillCosts.Of(plan, 2, day));
        StillCosts.Of(second with { Numbers = second.Numbers with { Forecast = second.Numbers.Forecast! with { Sessions = [second.Numbers.Forecast.Sessions[0] with { Embryos = Counts.Exactly(0) }, second.Numbers.Forecast.Sessions[1]] } } }, 2, day)!.Money.Amount
            .ShouldBeGreaterThan(0, "the first session's embryos are not the second's");
    }

    [Fact]
    public void A_price_that_is_not_given_is_at_least_and_one_for_all_pays_for_no_embryo_that_is_not_transferred()
    {
        var without = StillCosts.Of(Planned(Prices.Replace("assume cost per embryo 90 NZD\n", "", StringComparison.Ordinal)), 1, new(2026, 9, 13))!;
        (without.IsAll, Math.Round(without.Money.Amount, 6)).ShouldBe((false, 5 * 0.6 * 30));
        var allIn = StillCosts.Of(Planned("assume oocytes per collection 10, spread 5\n  source \"invented\"\nassume embryos per oocyte 25%, weight 50\nassume cost per embryo transferred 400 NZD\n"), 1, new(2026, 9, 13))!;
        (allIn.IsAll, allIn.Money.Amount).ShouldBe((true, 0));
    }
}
