using Byrelaw.Judging.Tests.Reference;

namespace Byrelaw.Judging.Tests.Floors;

/// <summary>Knowing less never clears anybody, however the rules above the floor are written.</summary>
public sealed class FloorLessInformationTests
{
    private const int Days = 60;

    /// <summary>"With `pass` on every rule but these, no cell made unreadable lets anybody in."</summary>
    [Fact]
    public void Where_every_rule_but_the_safety_rules_passes_what_is_not_known_a_cell_that_cannot_be_read_lets_nobody_in() => Each.Hold(
        FloorCase.Any.Where(one => !HasRowsAfterDeath(one)).SelectMany(one => Smudged(one).Select(less => (One: one, Less: less))),
        Cases.Count / 4,
        pair => Passing(pair.One.Rulebook) is var rulebook ? LetThrough.Anew(LetThrough.Answers(rulebook, pair.One), LetThrough.Answers(rulebook, pair.Less)) : null,
        pair => $"{pair.One}\n--- and smudged\n{Encoding.UTF8.GetString(FarmCsv.Animals(pair.Less.Farm))}{Encoding.UTF8.GetString(FarmCsv.Events(pair.Less.Farm))}");

    [Fact]
    public void A_test_whose_method_is_made_blank_clears_nobody_earlier() => Each.Hold(
        FloorCase.Any.Where(one => one.Farm.Events.Any(IsWritten)).SelectMany(one => Blanked(one).Select(less => (One: one, Less: less))),
        Cases.Count / 8,
        pair => ClearedEarlier(pair.One, pair.Less),
        pair => $"{pair.One}\n--- and blanked\n{Encoding.UTF8.GetString(FarmCsv.Events(pair.Less.Farm))}");

    /// <summary>What cannot be read is never taken for blank, and is in doubt as it stands.</summary>
    private static bool IsWritten(EventRow row) => row.Method.Length > 0 && row.Method != "scope";

    /// <summary>A row after her death may be anybody's; with the death smudged it is hers again.</summary>
    private static bool HasRowsAfterDeath(FloorCase one) => one.Farm.Events.Any(death => death.Kind == "death"
        && one.Farm.Events.Any(row => row.Animal == death.Animal && string.CompareOrdinal(row.Date, death.Date) > 0));

    private static Rulebook Passing(Rulebook rulebook) =>
        rulebook with { Rules = [.. rulebook.Rules.Select(rule => rule.IsSafety ? rule : rule with { IfNotKnown = IfNotKnown.Pass })] };

    /// <summary>One cell of an event or of an animal. Not of a male's: what he cannot have had is anybody's as it stands.</summary>
    private static Gen<FloorCase> Smudged(FloorCase one)
    {
        var events = Enumerable.Range(0, one.Farm.Events.Length).Where(i => one.Farm.Events[i].Animal != "B2").ToArray();
        var animals = Enumerable.Range(0, one.Farm.Animals.Length).Where(i => one.Farm.Animals[i].Sex == "F").ToArray();
        var ofAnimal = animals.Length == 0 ? Gen.Const(one) :
            from i in Gen.OneOf(animals)
            let row = one.Farm.Animals[i]
            from less in Gen.OneOf(row with { Born = "?" }, row with { Born = "" }, row with { Mob = "?" }, row with { Mob = "" }, row with { Facts = ["n/a"] }, row with { Facts = [""] }, row with { Parity = "two" }, row with { Sex = "" })
            select one with { Farm = one.Farm with { Animals = one.Farm.Animals.SetItem(i, less) } };
        return events.Length == 0 ? ofAnimal : Gen.Frequency((1, ofAnimal), (4,
            from i in Gen.OneOf(events)
            from less in GenFloorRecords.Garbled(one.Farm.Events[i])
            select one with { Farm = one.Farm with { Events = one.Farm.Events.SetItem(i, less) } }));
    }

    /// <summary>Of one row, or of all.</summary>
    private static Gen<FloorCase> Blanked(FloorCase one)
    {
        var written = Enumerable.Range(0, one.Farm.Events.Length).Where(i => IsWritten(one.Farm.Events[i])).ToArray();
        return
            from all in Gen.Bool
            from which in Gen.OneOf(written)
            select one with { Farm = one.Farm with { Events = [.. one.Farm.Events.Select((row, i) => i == which || (all && IsWritten(row)) ? row with { Method = "" } : row)] } };
    }

    private static string? ClearedEarlier(FloorCase one, FloorCase less)
    {
        var (before, after) = (LetThrough.Judged(one.Rulebook, one), LetThrough.Judged(one.Rulebook, less));
        for (var day = 0; day <= Days; day += 7)
        {
            var on = one.Rulebook.Records!.UpTo!.Value.PlusDays(day);
            if (LetThrough.Anew(before(on), after(on)) is { } wrong)
            {
                return $"on {on}, {wrong}";
            }
        }

        return null;
    }
}
