namespace Byrelaw.Reporting.Plans;

/// <summary>Whom to take as in calf, who may be, and which devices are in: before any count. On the transfer days of the first session that is not over.</summary>
internal static class DangerPart
{
    /// <summary>The line for the page; nothing where no list of recipients is drawn up.</summary>
    public static Wording Of(Plan plan)
    {
        if (plan.Sessions.IsEmpty || plan.Sessions[0].Session.Recipients is not { } recipients)
        {
            return "";
        }

        var taken = recipients.Animals.Where(animal => animal.InCalf == InCalf.TakeAsInCalf).Select(animal => animal.Number).Order(AnimalNumberOrder.Instance).ToList();
        var maybe = recipients.Animals.Count(animal => animal.InCalf == InCalf.MayBe);
        var devices = DeviceWords.Listed(plan.Draft);
        return $"{Wording.Bold("Take as in calf")}: {(taken.Count == 0 ? "none" : string.Join(", ", taken))}. {Wording.Bold("May be in calf")}: {(maybe == 0 ? "none" : $"{maybe}")}. "
            + $"{Wording.Bold("Devices in")}: {(devices.Length == 0 ? "none" : devices)}.";
    }
}
