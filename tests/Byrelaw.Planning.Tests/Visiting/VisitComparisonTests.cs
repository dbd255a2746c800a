using Byrelaw.Planning.Visiting;

namespace Byrelaw.Planning.Tests.Visiting;

public sealed class VisitComparisonTests
{
    private const string Visits = """
        visits "collection" every 14 days from 2026-08-17 to 2026-12-18
          not on 2026-10-26
        assume gestation 282 days
          source "Macmillan and Curnow 1976"
        """;

    private const string Assumptions = """

        assume oocytes per collection 9, spread 7
          because "b"
        assume embryos per oocyte 30%, weight 50
          because "b"
        assume pregnant per transfer 42%, weight 40
          because "b"
        assume pregnant per transfer in heifers 52%, weight 40
          because "b"
        assume cost per animal treated 55 NZD
        assume cost per collection 350 NZD
        assume cost per sample 12 NZD
        task "Sample the copper"
          for recipients
          due 4 weeks before collection
          settles serum copper
          costs 18 NZD per animal
          because "b"
        task "Sample them for BVD"
          for recipients
          due 4 weeks before collection
          results take 1 week
          settles BVD virus
          because "b"
        """;

    // The donor's mastitis of 1 August is 60 days old on 30 September; calves due after 5 September come too late.
    private static readonly WrittenPlan Farm = new()
    {
        Programme = "calve by 2027-09-05\ncollection on a visit between 2026-08-20 and 2026-12-10\ntransfer 8 days after collection\ndate first treatment 8 days before collection",
        More = Visits,
        Events =
        [
            "2026-08-01,1,mastitis,,", "2026-05-01,1,calving,,", "2026-05-01,2,calving,,", "2026-05-01,3,calving,,", "2026-05-01,4,calving,,",
        ],
    };

    [Fact]
    public void Every_visit_of_the_window_is_judged_on_its_own_days()
    {
        var comparison = Compared(Farm, new(2026, 8, 1))!;

        // Every second Monday, without 26 October; the donor is not clean before October; those of 7 December would calve on 16 September.
        comparison.Options.Select(option => (option.Collection, option.Donors.Count, string.Join(", ", option.Obstacles))).ShouldBe([
            (new LocalDate(2026, 8, 31), 0, "NoDonor"), (new(2026, 9, 14), 0, "NoDonor"), (new(2026, 9, 28), 0, "NoDonor"),
            (new(2026, 10, 12), 1, ""), (new(2026, 11, 9), 1, ""), (new(2026, 11, 23), 1, ""), (new(2026, 12, 7), 1, "TooLate")]);

        // Nobody's copper is known yet: they are to ask about, which is not the same as not to be used.
        comparison.Options.ShouldAllBe(option => option.Recipients.Count == 0 && option.Recipients.Asked > 0);
    }

    [Fact]
    public void A_visit_has_no_recipients_where_all_have_calved_too_lately()
    {
        // Calved on 1 August: on 8 September, the transfer of 31 August, that is 38 of 56 days; on 20 October it is 80.
        var farm = new WrittenPlan { Programme = Farm.Programme, More = Visits, Events = [.. Enumerable.Range(1, 4).Select(animal => $"2026-08-01,{animal},calving,,")] };
        var options = Compared(farm, new(2026, 8, 1))!.Options;
        options[0].Obstacles.ShouldContain(Obstacle.NoRecipient);
        options[0].Recipients.AtMost.ShouldBe(0);
        options.Single(option => option.Collection == new LocalDate(2026, 10, 12)).Obstacles.ShouldNotContain(Obstacle.NoRecipient);
    }

    [Fact]
    public void The_best_is_named_with_what_sets_it_apart()
    {
        var farm = new WrittenPlan { Programme = Farm.Programme, More = Visits, Events = [.. Farm.Events, "2026-08-01,2,serum copper,9,umol/L", "2026-08-01,3,serum copper,9,umol/L"] };
        Compared(farm, new(2026, 8, 1))!.Best!.Collection.ShouldBe(new LocalDate(2026, 10, 12), "copper can still be found out");
        var sampled = new WrittenPlan { Programme = Farm.Programme, More = Visits.Replace("2026-10-26", "2026-09-28, 2026-10-26"), Events = farm.Events };
        var rulebook = sampled.Rulebook;
        var withoutCopper = rulebook with { Rules = [.. rulebook.Rules.Where(rule => rule.Name != "Copper")] };
        var comparison = VisitComparison.Of(withoutCopper, sampled.Herd(rulebook), new(2026, 8, 1))!;
        comparison.Best!.Collection.ShouldBe(new LocalDate(2026, 10, 12));
        (comparison.Because, comparison.RunnerUp!.Collection).ShouldBe((Advantage.Earlier, new LocalDate(2026, 11, 9)));

        // Of two that are alike but for their chance the better chance is liked better, though it is later.
        var alike = comparison.Best with { Outlook = new(2, 0.4, new Money(1000, "NZD")) };
        var ranked = VisitOrder.Best([alike, comparison.RunnerUp with { Outlook = new(2, 0.5, new Money(1000, "NZD")) }]);
        (ranked[0].Collection, VisitOrder.Why(ranked)).ShouldBe((new LocalDate(2026, 11, 9), Advantage.Chance));
    }

    [Fact]
    public void A_visit_whose_treatments_should_have_started_cannot_be_used_unless_another_method_still_can()
    {
        // Day 0 of the insert for 31 August is 23 August, and prostaglandin is given on 29 August: on the 30th only natural heat is left.
        var named = new WrittenPlan { Programme = Farm.Programme + "\nprepare recipients by \"Progesterone insert\", \"Prostaglandin once\"", More = Visits, Events = Farm.Events };
        Compared(named, new(2026, 8, 24))!.Options[0].Obstacles.ShouldNotContain(Obstacle.TreatmentPast);
        Compared(named, new(2026, 8, 31))!.Options[0].Obstacles.ShouldContain(Obstacle.TreatmentPast);
        Compared(Farm, new(2026, 8, 31))!.Options[0].Obstacles.ShouldNotContain(Obstacle.TreatmentPast);
    }

    [Fact]
    public void A_visit_is_expected_to_bring_and_cost_what_the_plan_on_that_day_says()
    {
        // Two heifers and two cows; a heifer rate of its own; a task that is paid for by the animal; one who may not be treated.
        var farm = new WrittenPlan
        {
            Programme = Farm.Programme + "\nwants 1 pregnancy, 60% sure\nprepare recipients by \"Progesterone insert\"",
            Lists = "\n  choose donors from \"1\", judged on collection\n  choose treatment from females, judged on first treatment\n  choose recipients from females, judged on first transfer\n",
            More = Visits + Assumptions,
            Events = ["2026-05-01,2,calving,,", "2026-08-01,3,calving,,", "2026-07-30,2,serum copper,9,umol/L"],
        };
        var rulebook = farm.Rulebook;
        var plan = Planner.Plan(rulebook, farm.Herd(rulebook), new(2026, 8, 1));

        // Visits are compared as if all who are asked about passed, with sessions alike; the plan of one of them goes by name, and has tasks only for
        // those whom the result can make sure: not for her who may not be treated.
        var everybodys = plan.Inputs.Tasks.Select(task => task with { Animals = task.Animals + 1 });
        var alike = SeasonPlanner.Plan(plan.Inputs with { Named = null, IfAllPass = null, Tasks = [.. everybodys] });
        var outlook = plan.Visits!.Best!.Outlook!;
        (outlook.Chance, outlook.Wanted).ShouldBe((alike.Forecast!.Chance, alike.Forecast.At(Stage.Pregnant).Mean));
        outlook.Cost!.Value.Amount.ShouldBe(alike.Budget!.Total, 1e-9);
        alike.Budget.Lines.Select(line => line.Charge.For ?? line.Charge.Per.ToString()).ShouldBe(["Progesterone insert", "Collection", "Sample", "Sample the copper"]);
        plan.Inputs.Carriers.Heifers.ShouldBeInRange(0.01, 0.99);
    }

    [Fact]
    public void Every_visit_is_expected_to_bring_what_a_plan_of_that_day_alone_would()
    {
        var farm = new WrittenPlan { Programme = Farm.Programme + "\nwants 1 pregnancy, 60% sure", More = Visits + Assumptions, Events = Farm.Events };
        var rulebook = farm.Rulebook;
        var herd = farm.Herd(rulebook);
        foreach (var option in VisitComparison.Of(rulebook, herd, new(2026, 8, 1))!.Options)
        {
            var set = option.Rulebook with { Programme = option.Rulebook.Programme! with { Aims = option.Rulebook.Programme!.Aims with { OnAVisit = null } } };
            var plan = Planner.Plan(set, herd, new(2026, 8, 1));
            var alike = SeasonPlanner.Plan(plan.Inputs with { Named = null, IfAllPass = null });
            (option.Outlook!.Chance, option.Outlook.Cost!.Value.Amount).ShouldBe((alike.Forecast!.Chance, alike.Budget!.Total));
            (plan.Numbers.Forecast!.Chance <= plan.Numbers.IfAllPass!.Chance).ShouldBeTrue();
            option.Recipients.AtMost.ShouldBe(plan.Inputs.Animals);
        }
    }

    [Fact]
    public void A_programme_whose_day_is_set_leaves_nothing_to_choose() => Compared(new WrittenPlan(), new(2026, 8, 1)).ShouldBeNull();

    private static VisitComparison? Compared(WrittenPlan farm, LocalDate today)
    {
        var rulebook = farm.Rulebook;
        return VisitComparison.Of(rulebook, farm.Herd(rulebook), today);
    }
}
