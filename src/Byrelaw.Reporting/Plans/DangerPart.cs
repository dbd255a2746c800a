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

        var maybe = recipients.Animals.Count(animal => animal.InCalf == InCalf.MayBe);
        return DangerLine.Of(plan.Draft, DangerLine.Those(recipients, InCalf.TakeAsInCalf), maybe == 0 ? "none" : Numbers.Count(maybe, "animal", "animals"));
    }
}
