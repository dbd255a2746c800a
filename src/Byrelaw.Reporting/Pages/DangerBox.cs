namespace Byrelaw.Reporting.Pages;

/// <summary>Before any count: whom to take as in calf, and who may be. The floor alone says so, on the days that are judged.</summary>
internal static class DangerBox
{
    /// <summary>The box of a list, with all numbers.</summary>
    public static Framed Of(ListJudgement list) => new(Frame.Danger, Taken(list), Maybe(list));

    private static Wording Taken(ListJudgement list) => DangerLine.Those(list, InCalf.TakeAsInCalf) is var those && those == "none" ? (Wording)"Nobody is to be taken as in calf by these records."
        : $"{Wording.Label(InCalf.TakeAsInCalf)} {Wording.Bold(those)}. No hormone, no pipette.";

    /// <summary>A promise that is missing for all is one sentence, and not all numbers.</summary>
    private static Wording Maybe(ListJudgement list) =>
        list.Animals.Count(animal => animal.InCalf == InCalf.MayBe) is > 20 and var count && count == list.Animals.Count(animal => animal.InCalf != InCalf.TakeAsInCalf) ? (Wording)$"{Wording.Label(InCalf.MayBe)} all {count} others. The records do not say of anybody that she is not."
        : DangerLine.Those(list, InCalf.MayBe) is var those && those == "none" ? (Wording)"They name nobody who may be; look up her status on the day all the same."
        : $"{Wording.Label(InCalf.MayBe)} {Wording.Bold(those)}. Until a scan says not: how, and by whom.";
}
