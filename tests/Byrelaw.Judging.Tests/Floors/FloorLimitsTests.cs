using Byrelaw.Judging.Tests.Reference;

namespace Byrelaw.Judging.Tests.Floors;

/// <summary>
/// Every number of the floor from both sides: animals to whom something happened, each tested, or judged, so many days later. Drawn at random the very day
/// of a limit is met too seldom for a wrong number to show.
/// </summary>
public sealed class FloorLimitsTests
{
    private const string Rules = """
        event calving  not before 15 months of age
        event abortion  not before 9 months of age
        event purchase  joins the herd
        event mating  not before 6 months of age
        event transfer  not before 6 months of age
        event drying off  not before 15 months of age
        event bull in  not before 6 months of age
        event bull out  not before 6 months of age
        spell running with bull  from bull in until bull out, or in a mob with a male from 6 months of age
        test pregnancy test  answers pregnant, empty  in the yards, with method is one of ultrasound, blood, milk, hand, blank is hand
        fact origin  is one of home-bred, bought

        rules for recipients
        rule "Old enough"
          needs age at least 1 month
          because "There must be a rule."
          source "example"

        records "records"
          up to 2026-06-01
          complete for calving, abortion, purchase, mating, transfer, drying off, bull in, bull out, pregnancy test since 2019-01-01
          no mob on this farm since 2019-01-01

        programme "All sides"
          choose recipients from females, judged on 2026-06-01

        """;

    private const int HappenedAgo = 100;
    private static readonly LocalDate Known = new(2026, 6, 1);
    private static readonly string[] Methods = ["ultrasound", "hand", ""];

    [Fact]
    public void On_either_side_of_each_the_program_says_what_the_literal_floor_says() =>
        Parallel.ForEach(Tested().Concat(Waited()), group => Hold(group.Name, [.. group.Animals]));

    private static void Hold(string name, EventRow[][] animals)
    {
        var farm = new PlainFarm(
            ["origin"],
            [.. animals.Select((rows, place) => new AnimalRow($"{place + 1}", "2022-01-10", "F", "", "", [rows.Any(row => row.Kind == "purchase") ? "bought" : "home-bred"]))],
            [.. animals.SelectMany((rows, place) => rows.Select(row => row with { Animal = $"{place + 1}" }))]);
        var one = new FloorCase(ImmutableSortedDictionary<string, string>.Empty.Add(FloorCase.Programme, Rules), farm, null);
        var answers = LetThrough.Answers(one.Rulebook, one);
        var literal = new ReferenceJudge(one.Rulebook, farm);
        var met = animals.Select((rows, place) =>
        {
            var holds = literal.FloorOf(place, Known, Known).All(rule => rule.Days.On(DayNumber.Of(Known)).Truth == Truth.True);
            answers[("recipients", $"{place + 1}")].MayBeUsed().ShouldBe(holds, $"{name}: {string.Join("; ", rows.Select(row => $"{row.Date} {row.Kind} {row.Value} {row.Method}"))}");
            return holds;
        });

        // Some meet the floor, and some do not: else no limit lies among them.
        met.Distinct().Count().ShouldBe(2, name);
    }

    /// <summary>What a test clears, so many days after it, by each method.</summary>
    private static IEnumerable<(string Name, IEnumerable<EventRow[]> Animals)> Tested() =>
        from kind in new[] { "mating", "transfer", "bull out", "purchase", "drying off" }
        from method in Methods
        let before = kind switch { "bull out" => new[] { Row(HappenedAgo + 30, "bull in") }, "drying off" => [Row(300, "calving")], _ => [] }
        let limits = kind == "drying off" ? new[] { 1 } : [28, 35, 42]
        select ($"{kind}, then {method}", limits.SelectMany(Around).Select(wait => (EventRow[])
            [.. before, Row(HappenedAgo, kind), Row(HappenedAgo - wait, "pregnancy test") with { Value = "empty", Method = method }]));

    /// <summary>What time alone clears: she has calved since, or has not been in milk for long.</summary>
    private static IEnumerable<(string Name, IEnumerable<EventRow[]> Animals)> Waited() =>
    [
        ("served before she calved", Around(28).Select(ago => (EventRow[])[Row(283, "mating"), Row(ago, "mating"), Row(1, "calving")])),
        ("given an embryo before she calved", Around(28).Select(ago => (EventRow[])[Row(283, "mating"), Row(ago, "transfer"), Row(1, "calving")])),
        ("with the bull before she calved", Around(36).Select(ago => (EventRow[])[Row(283, "mating"), Row(90, "bull in"), Row(ago, "bull out"), Row(1, "calving")])),
        ("dried off", Around(150).Select(ago => (EventRow[])[Row(ago, "calving"), Row(30, "drying off")])),
    ];

    private static IEnumerable<int> Around(int limit) => Enumerable.Range(limit - 2, 4);

    private static EventRow Row(int ago, string kind) => new(LocalDatePattern.Iso.Format(Known.PlusDays(-ago)), "", kind);
}
