namespace Byrelaw.Reporting.Plans;

/// <summary>The calendar: a timeline, and every day of it in words.</summary>
internal static class CalendarPart
{
    public static Part Of(Plan plan)
    {
        var table = new Table("Day by day", "day", "what", "beware");
        foreach (var entry in plan.Calendar.Entries.Where(entry => entry.Kind != EntryKind.TaskStart))
        {
            table.Add(
                $"{Wording.Bold(EntryWords.Days(entry))}{(entry.To < plan.Today ? " (past)" : "")}",
                EntryWords.What(entry, PlanHead.Aims(plan)), EntryWords.Beware(entry));
        }

        if (table.IsEmpty)
        {
            return Part.None;
        }

        var part = new DocumentBuilder().Heading(2, "The calendar").Sentence(Methods(plan)).Table(table);
        var clashes = plan.Calendar.VisitClashes.Select(clash => $"{Dates.Long(clash.Date)}: {EntryWords.Of(clash)}").ToList();
        return (clashes.Count == 0 ? part : part.Sentence("No team comes on these days, by the visits that are declared:").Bullets(clashes))
            .Picture(CalendarPicture.Of(plan.Calendar, plan.Today)).As("calendar");
    }

    /// <summary>Several methods stand side by side, and no animal is to be treated by two of them.</summary>
    private static string Methods(Plan plan)
    {
        var shown = plan.Calendar.Treatments.Select(treatment => treatment.Method.Name).Distinct().Count();
        var treated = plan.Numbers.Sessions.SelectMany(session => session.Treated).Where(one => one.Animals > 0).Select(one => one.Method.Name).Distinct().ToList();
        return shown < 2 ? ""
            : "Every method that may be used has its days here; an animal is treated by one of them only."
                + (treated.Count == 0 ? "" : $" This plan reckons with {Phrases.And(treated)}.");
    }
}

/// <summary>An entry of the calendar in words, for pages and for calendar files.</summary>
public static class EntryWords
{
    /// <summary>Its day with the day of the week, or its days.</summary>
    public static string Days(PlanEntry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        return entry.From == entry.To ? $"{entry.From.DayOfWeek.ToString()[..3]} {Dates.Long(entry.From)}" : Dates.Range(entry.From, entry.To);
    }

    /// <summary>What is done or happens.</summary>
    public static string What(PlanEntry entry, Aims aims)
    {
        ArgumentNullException.ThrowIfNull(entry);
        ArgumentNullException.ThrowIfNull(aims);
        var session = entry.Session is { } number and > 1 ? $" (session {number})" : "";
        return entry.Kind switch
        {
            EntryKind.TaskStart => $"Last day to start: {entry.Subject}",
            EntryKind.CleanTime => $"Clean time: {entry.Subject}",
            EntryKind.Treatment or EntryKind.DonorTreatment => $"{entry.Subject}{session}: {Step(entry.Step!)}",
            EntryKind.HeatWatch => $"{entry.Subject}{session}: watch for heat",
            EntryKind.Collection => (aims.Embryos == EmbryoOrigin.Flushed ? "Flush" : "Collection of eggs") + session,
            EntryKind.Transfer => "Transfer of embryos" + session,
            EntryKind.StartOfMating => "Planned start of mating",
            _ => $"Calves due{session}",
        };
    }

    /// <summary>What must be said beside it: cautions, and what is wrong with its day.</summary>
    public static string Beware(PlanEntry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        return string.Join(' ', entry.Clashes.Select(clash => Phrases.Stop(Phrases.Sentence(Of(clash)))).Concat(entry.Cautions.Select(caution => caution.Text)).Distinct());
    }

    internal static string Of(Clash clash) => clash.Kind switch
    {
        ClashKind.Weekend => clash.Date.DayOfWeek == IsoDayOfWeek.Saturday ? "a Saturday" : "a Sunday",
        ClashKind.Holiday => $"a public holiday: {clash.Holiday}",
        _ => $"no visit for {clash.Visits} on this day",
    };

    private static string Step(MethodStep step) => step.Text
        + (step.Part is { } part ? $", {(part == DayPart.Morning ? "in the morning" : "in the evening")}" : "")
        + (step.After is { } after ? $", {Numbers.Count(after.Hours, "hour", "hours")} after day {after.Day}" : "");
}
