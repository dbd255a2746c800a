using Byrelaw.Judging.Tests.Reference;

namespace Byrelaw.Judging.Tests.Floors;

/// <summary>
/// "For every Ask of the base rules, unless a line is broken, a completion that makes her usable is searched for and found": the second half of completion. What is asked is asked by
/// the program; whether she may be used once the records are completed is said by the literal evaluator.
/// </summary>
public sealed class AsksWorthAskingTests
{
    private const int LongAgo = 5000;

    [Fact]
    public void For_every_Ask_of_the_base_rules_there_is_a_completion_that_makes_her_usable()
    {
        var asked = 0;
        Each.Hold(BaseRulesCase.Any, Cases.Count / 10, one => InVain(one, ref asked), one => one.ToString());
        (Drawn.Only is not null || asked > 10).ShouldBeTrue($"{asked} were asked about");
    }

    private static string? InVain(BaseRulesCase one, ref int asked)
    {
        var herd = HerdReader.Read(FarmCsv.Animals(one.Farm), FarmCsv.Events(one.Farm), one.Rulebook.Vocabulary, one.Rulebook.Records);
        var choice = one.Rulebook.Programme!.Choices.Single();
        var (animals, answers) = new Judge(one.Rulebook, herd).Answers(choice);
        if (herd.Coverage.Gaps.Length > 0)
        {
            // What a row that cannot be read would mend for one rule it may spoil for another: a calving that ends a transfer is too short ago to treat her.
            return null;
        }

        foreach (var (animal, answer) in animals.Zip(answers).Where(said => said.Second == Answer.Ask))
        {
            Interlocked.Increment(ref asked);
            var place = one.Farm.Animals.IndexOf(one.Farm.Animals.Single(row => row.Number == herd.Numbers[animal]));
            if (!Completions(one, place).Any(whole => new ReferenceJudge(whole.Rulebook, whole.Farm).Over(choice, place) == Truth.True))
            {
                return $"{herd.Numbers[animal]} is asked about, and nothing that may be found out makes her usable";
            }
        }

        return null;
    }

    /// <summary>
    /// Everything promised; results that are not in are good ones; blank cells say what is usual. And of her what would settle most: an empty scan on the day itself, with a heat
    /// the week before, or a calving some weeks ago with its service, or both.
    /// </summary>
    private static IEnumerable<(Rulebook Rulebook, PlainFarm Farm)> Completions(BaseRulesCase one, int place)
    {
        // What is found out is found out by the day she is judged for, and by then the records reach it.
        var day = one.Rulebook.Programme!.Choices.Single().JudgedFrom;
        var whole = one.Rulebook with { Records = one.Rulebook.Records! with { UpTo = day, Complete = [new Completeness([.. one.Rulebook.Vocabulary.Kinds], one.Known.PlusDays(-LongAgo), Words.Nowhere)] } };
        var kept = one.Farm.Events.Select(Settled).ToList();
        var number = one.Farm.Animals[place].Number;
        EventRow scan = new(Text(day), number, "pregnancy test", "empty", Method: "ultrasound");
        EventRow heat = new(Text(one.Known.PlusDays(-6)), number, "heat");
        EventRow[] calved = [new(Text(one.Known.PlusDays(-60 - 283)), number, "mating"), new(Text(one.Known.PlusDays(-60)), number, "calving")];
        foreach (var more in new EventRow[][] { [], [scan], [heat, scan], calved, [.. calved, scan] }.SelectMany(more => new EventRow[][] { more, [.. more, .. MovedLongAgo(one)] }))
        {
            yield return (whole, one.Farm with { Animals = [.. one.Farm.Animals.Select(row => Filled(row, one.Known))], Events = [.. kept, .. more, .. Apart(one, kept, number)] });
        }
    }

    /// <summary>Where moves of those days are not promised, each may have gone to a mob of her own, and a bull to his.</summary>
    private static IEnumerable<EventRow> MovedLongAgo(BaseRulesCase one)
    {
        var day = one.Known.PlusDays(-900);
        return one.Rulebook.Records!.Complete.Any(complete => complete.Since <= day && complete.Kinds.Any(kind => kind is EventKind { IsMobMove: true })) ? []
            : one.Farm.Animals.Select(animal => new EventRow(Text(day), animal.Number, "mob", "Apart " + animal.Number));
    }

    /// <summary>With whom the bull of a mob mate ran only a move can say: she was apart with him from that day on.</summary>
    private static IEnumerable<EventRow> Apart(BaseRulesCase one, List<EventRow> kept, string number) =>
        from row in kept
        where row.Kind is "bull in" or "bull out" && row.Animal != number && one.Farm.Animals.Any(animal => animal.Number == row.Animal)
        from day in row.Kind == "bull in" ? new[] { row.Date } : [row.Date, Text(one.Known.PlusDays(-1500))]
        select new EventRow(day, row.Animal, "mob", "Apart with " + row.Animal);

    private static EventRow Settled(EventRow row) => row.Kind != "pregnancy test" ? row : row with
    {
        Value = row.Value is "pregnant" or "empty" ? row.Value : "empty",
        Method = row.Method is "ultrasound" or "hand" ? row.Method : "ultrasound",
    };

    private static AnimalRow Filled(AnimalRow row, LocalDate known) => row with
    {
        Born = row.Born.Length == 10 ? row.Born : Text(known.PlusDays(-1000)),
        Sex = row.Sex.Length > 0 ? row.Sex : "F",
        Mob = row.Mob.Length > 0 ? row.Mob : "Apart " + row.Number,
        Facts = row.Facts.SetItem(0, row.Facts[0] is "bought" ? "bought" : "home-bred"),
    };

    private static string Text(LocalDate date) => LocalDatePattern.Iso.Format(date);
}
