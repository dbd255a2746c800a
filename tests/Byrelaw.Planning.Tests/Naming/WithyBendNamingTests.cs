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
        var numbers = Planner.Plan(Draft.Rulebook, Draft.Herd, Today).Numbers;
        foreach (var stage in numbers.Forecast!.Stages)
        {
            stage.Counts.Mean.ShouldBeLessThanOrEqualTo(numbers.IfAllPass!.At(stage.Stage).Mean + 1e-9, $"{stage.Stage}");
        }

        numbers.Sessions.Select(session => session.Donors).ShouldBe([1, 3, 3]);
        numbers.Sessions.Select(session => session.Treated[0].Animals).ShouldBe([9, 18, 0]);
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
