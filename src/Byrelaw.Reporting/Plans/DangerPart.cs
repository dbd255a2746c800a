using Byrelaw.Reporting.Pages;

namespace Byrelaw.Reporting.Plans;

/// <summary>Whom to take as in calf, and who may be, with all numbers: before any count. On the transfer days of the first session that is not over.</summary>
internal static class DangerPart
{
    /// <summary>Adds the box; nothing where no list of recipients is drawn up.</summary>
    public static void Add(DocumentBuilder part, Plan plan)
    {
        if (plan.Sessions.IsEmpty || plan.Sessions[0].Session.Recipients is not { } recipients)
        {
            return;
        }

        part.Draw(DangerBox.Of(new ListReport(plan.Draft, recipients)))
            .Sentence($"On {Dates.Range(recipients.Choice.JudgedFrom, recipients.Choice.JudgedTo)}. Before a hormone see the sheet of that morning: more may stand there.", Tone.Soft);
    }
}
