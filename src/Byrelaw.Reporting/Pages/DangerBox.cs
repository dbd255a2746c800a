namespace Byrelaw.Reporting.Pages;

/// <summary>Before any count: whom to take as in calf, and who may be. The floor alone says so, on the days that are judged.</summary>
internal static class DangerBox
{
    private const string Until = "No hormone and no pipette until a scan late enough after her last service or bull finds no calf; write down how it was done, and by whom.";

    /// <summary>A promise that is missing for so many and more is one sentence, and not all numbers.</summary>
    private const int ForAll = 20;

    /// <summary>The box of a list, with all numbers; where the rule files have no words for it, that nobody has looked.</summary>
    public static Framed Of(ListReport list) => list.Rulebook.Floor.IsEmpty && list.List.Animals.All(animal => animal.InCalf == InCalf.NotTold)
        ? new(Frame.Danger, $"{Wording.Label(InCalf.MayBe)} any of them: the rule files have no words for who is in calf, so nobody has looked. {Until}")
        : new(Frame.Danger, Taken(list.List), MayBe(list.List));

    private static Wording Taken(ListJudgement list) => DangerLine.Numbers(list, InCalf.TakeAsInCalf) is { IsEmpty: false } those
        ? (Wording)$"{Wording.Label(InCalf.TakeAsInCalf)} {Wording.Bold(string.Join(", ", those))}. No hormone, no pipette."
        : "By these records no animal on this list has to be taken as in calf.";

    private static Wording MayBe(ListJudgement list)
    {
        var those = DangerLine.Numbers(list, InCalf.MayBe);
        return those.IsEmpty ? (Wording)"The records name nobody on this list who may be in calf; look up each animal's status on the day all the same."
            : those.Length > ForAll && list.Animals.All(animal => animal.InCalf != InCalf.NotTold) ? (Wording)$"{Wording.Label(InCalf.MayBe)} {(those.Length == list.Animals.Length ? $"all {those.Length}" : $"all {those.Length} others")}: the records do not say of anybody that she is not. {Until}"
            : $"{Wording.Label(InCalf.MayBe)} {Wording.Bold(string.Join(", ", those))}. {Until}";
    }
}
