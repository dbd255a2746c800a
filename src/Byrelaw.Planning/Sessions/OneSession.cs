using Byrelaw.Planning.LeadTimes;

namespace Byrelaw.Planning.Sessions;

/// <summary>A plan of which only one session is told: who, what is to be done, on which days. What comes of it and what it costs are of the season as a whole.</summary>
public static class OneSession
{
    /// <summary>The plan; null where it has no such session, or that session is over.</summary>
    public static Plan? Of(Plan plan, int session)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ImmutableArray<NamedSession> only = [.. plan.Sessions.Where(one => one.Number == session)];
        return only.IsEmpty ? null : plan with
        {
            Season = plan.Season with { Named = only },
            Calendar = plan.Calendar with
            {
                Sessions = [.. plan.Calendar.Sessions.Where(one => one.Number == session)],
                Treatments = [.. plan.Calendar.Treatments.Where(treatment => treatment.Session == session)],
                Donors = [.. plan.Calendar.Donors.Where(treatment => treatment.Session == session)],
                Tasks = [.. plan.Calendar.Tasks.Where(Is)],
                Entries = [.. plan.Calendar.Entries.Where(entry => entry.Task is { } task ? Is(task) : entry.Session is not { } own || own == session)],
            },
        };

        bool Is(TaskDates task) => task.Session == session;
    }
}
