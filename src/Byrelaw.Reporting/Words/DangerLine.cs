namespace Byrelaw.Reporting.Words;

/// <summary>Before any count: whom to take as in calf, who may be, which devices are in. The floor alone says so, on the days that are judged.</summary>
public static class DangerLine
{
    /// <summary>The line of a list, with all numbers.</summary>
    public static Wording Of(Draft draft, ListJudgement list)
    {
        ArgumentNullException.ThrowIfNull(draft);
        ArgumentNullException.ThrowIfNull(list);
        return Of(draft, Those(list, InCalf.TakeAsInCalf), Those(list, InCalf.MayBe));
    }

    /// <summary>The line, where those who may be are told as said.</summary>
    public static Wording Of(Draft draft, string taken, string maybe)
    {
        var devices = DeviceWords.Listed(draft);
        return $"{Wording.Bold("Take as in calf")}: {taken}. {Wording.Bold("May be in calf")}: {maybe}. {Wording.Bold("Devices in")}: {(devices.Length == 0 ? "none" : devices)}.";
    }

    /// <summary>Their numbers in a line; <c>none</c>.</summary>
    public static string Those(ListJudgement list, InCalf which) => Numbers(list, which) is { IsEmpty: false } those ? string.Join(", ", those) : "none";

    /// <summary>Their numbers, in order.</summary>
    public static ImmutableArray<string> Numbers(ListJudgement list, InCalf which)
    {
        ArgumentNullException.ThrowIfNull(list);
        return [.. list.Animals.Where(animal => animal.InCalf == which).Select(animal => animal.Number).Order(AnimalNumberOrder.Instance)];
    }
}
