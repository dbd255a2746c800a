namespace Byrelaw.Judging.Tests.Floors;

/// <summary>"A cow that may be in calf never comes out Ready (or On course) for a hormone or an embryo": tried on cows of which the test knows that they are.</summary>
public sealed class InCalfTests
{
    [Fact]
    public void A_cow_in_calf_is_let_through_on_no_list_whatever_the_rules_and_the_promises() => Each.Hold(
        GenInCalf.Any, Cases.Count / 3, one => Through(one), one => one.ToString());

    [Fact]
    public void Nor_is_she_where_a_cell_of_her_records_cannot_be_read() => Each.Hold(
        GenInCalf.Any.Where(one => one.Farm.Events.Length > 0).SelectMany(one =>
            from i in Gen.Int[0, one.Farm.Events.Length - 1]
            from row in GenFloorRecords.Garbled(one.Farm.Events[i])
            select one with { Farm = one.Farm with { Events = one.Farm.Events.SetItem(i, row) } }),
        Cases.Count / 3,
        one => Through(one),
        one => one.ToString());

    private static string? Through(FloorCase one)
    {
        var floors = one.Rulebook.Programme!.Choices.Where(choice => choice.HasFloor).Select(choice => choice.List).ToHashSet();
        return LetThrough.Answers(one.Rulebook, one)
            .Where(said => said.Key.Animal == GenInCalf.Number && floors.Contains(said.Key.List) && said.Value.MayBeUsed())
            .Select(said => $"{said.Key.List}: {said.Value}").FirstOrDefault();
    }
}
