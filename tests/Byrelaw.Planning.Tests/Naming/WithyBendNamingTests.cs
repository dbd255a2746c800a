using Byrelaw.Planning.Naming;

namespace Byrelaw.Planning.Tests.Naming;

/// <summary>The example farm on 4 October, the morning the first devices go in.</summary>
public sealed class WithyBendNamingTests
{
    private static readonly LocalDate Today = new(2026, 10, 4);
    private static readonly Judging.Verdicts.Draft Draft = ExampleFarm.Draft("examples/withy-bend", "spring-2026.byre");

    // Counted apart from this program, by hand and by a count of our own over the farm's files.
    [Fact]
    public void Sure_by_a_device_are_24_and_21_and_nobody_and_7_of_them_in_both()
    {
        var sessions = Namer.Name(Draft, Today);
        var sure = sessions.Select(session => session.Methods[0].Animals.Select((animal, place) => (animal, place)).Where(one => one.animal.Standing == Standing.Sure)
            .Select(one => one.place).Except(session.Session.Donors!.Animals.Select(donor => donor.Animal)).ToHashSet()).ToList();
        sessions.Select(session => session.Methods[0].Method.Name).Distinct().ShouldHaveSingleItem().ShouldBe("Progesterone insert");
        sure.Select(animals => animals.Count).ShouldBe([24, 21, 0]);
        sure[0].Intersect(sure[1]).Count().ShouldBe(7);
    }

    [Fact]
    public void Those_named_bring_no_more_at_any_stage_than_all_asked_would()
    {
        var plan = Planner.Plan(Draft.Rulebook, Draft.Herd, Today);
        var numbers = plan.Numbers;
        foreach (var stage in numbers.Forecast!.Stages)
        {
            stage.Counts.Mean.ShouldBeLessThanOrEqualTo(numbers.IfAllPass!.At(stage.Stage).Mean + 1e-9, $"{stage.Stage}");
        }

        numbers.Sessions.Select(session => session.Donors).ShouldBe([1, 3, 3]);
        numbers.Sessions.Select(session => session.Treated[0].Animals).ShouldBe([9, 18, 0]);
        HoldsWhatMatters(plan);
        HoldsSideBySide(plan);
    }

    private static void HoldsWhatMatters(Plan plan)
    {
        plan.WhatMatters.Select(matter => matter.Difference).ShouldBe(plan.WhatMatters.Select(matter => matter.Difference).OrderDescending());
        var expected = plan.Numbers.IfAllPass!.At(Stage.Heifers).Mean;
        foreach (var matter in plan.WhatMatters)
        {
            // Low is worse and high is better of every share here, and what is expected lies between.
            matter.AtLow.ShouldBeLessThan(expected + 0.02, $"{matter.Assumed?.Quantity} {matter.Step}");
            matter.AtHigh.ShouldBeGreaterThan(expected - 0.02, $"{matter.Assumed?.Quantity} {matter.Step}");
        }

        // A share of 17% that is worth 20 animals: one chance in ten below 7.3%, one above 28.2% (R, qbeta(c(0.1, 0.9), 3.4, 16.6); from memory).
        var first = plan.WhatMatters[0];
        first.Assumed!.Quantity.ShouldBe(AssumedQuantity.EmbryosPerOocyte);
        (Math.Round(first.Low, 3), Math.Round(first.High, 3)).ShouldBe((0.073, 0.282));
        plan.WhatMatters.ShouldContain(matter => matter.Method == "Progesterone insert" && matter.Step == UseStep.Accepted);
    }

    private static void HoldsSideBySide(Plan plan)
    {
        var methods = plan.SideBySide;
        methods.Select(method => method.Method.Name).ShouldBe(plan.Draft.Rulebook.Plans.Methods.Where(method => !method.IsForDonors).Select(method => method.Name), ignoreOrder: true);
        var insert = methods.Single(method => method.Method.Name == "Progesterone insert");
        (insert.IsChosen, insert.IsAtLeast).ShouldBe((true, false));
        insert.Sessions.ShouldBe([1, 2, 3]);

        // (E + T + (S + K) / u) / p by hand: 350 for 15 eggs of which 17% are embryos, 90 for making one, 45 for the transfer, 55 for each of those treated, of whom 80% are used; nothing for keep.
        var calves = plan.Numbers.Reading.Chain!.AfterTransfer.Aggregate(1.0, (left, step) => left * step.Rate.Share);
        insert.CostPerAccepted!.Value.ShouldBe(55 / 0.8, 1e-9);
        insert.CostPerLiveHeifer!.Value.ShouldBe(((350 / (15 * 0.17)) + 90 + 45 + (55 / 0.8)) / calves, 1e-6);
        methods.Where(method => method.CostPerLiveHeifer is null).ShouldAllBe(method => plan.Draft.Rulebook.Plans.CostOf(method.Method) == null);
        methods.Single(method => method.Method.Name == "Prostaglandin twice").Sessions.ShouldBe([2, 3], "its day 0 for session 1 is past");
    }

    [Fact]
    public void With_9_and_14_wanted_11_and_4_are_spare()
    {
        var sessions = Namer.Name(Draft, Today, [9, 14, 14]);
        sessions.Select(session => session.Named.Length).ShouldBe([9, 14, 0]);
        sessions.Select(session => session.Spares.Length).ShouldBe([11, 4, 0]);
        sessions.Select(session => session.ToAsk.Length).ShouldBe([0, 0, 14]);
        sessions.Select(session => session.Short).ShouldBe([0, 0, 14]);
        foreach (var number in new[] { "1040", "1045", "1067", "1073" })
        {
            sessions[1].Named.ShouldContain(animal => animal.Number == number);
        }
    }
}
