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

        var part = new DocumentBuilder().Heading(2, "The calendar").Table(table).Bullets(NotYet(plan));
        var clashes = plan.Calendar.VisitClashes.Select(clash => $"{Dates.Long(clash.Date)}: {EntryWords.Of(clash)}").ToList();
        return (clashes.Count == 0 ? part : part.Sentence("No team comes on these days, by the visits that are declared:").Bullets(clashes))
            .Picture(CalendarPicture.Of(plan.Calendar, plan.Today)).As("calendar");
    }

    /// <summary>Only what will be done stands on the calendar: of the rest, what may still come to it.</summary>
    private static IEnumerable<string> NotYet(Plan plan)
    {
        foreach (var session in plan.Sessions)
        {
            foreach (var method in session.Methods.Where(method => !method.Method.IsNatural && session.Named.All(animal => animal.Method != method.Method.Name)))
            {
                var asked = session.ToAsk.Count(animal => animal.Method == method.Method.Name);
                if (asked > 0)
                {
                    yield return $"Session {session.Number}, {method.Method.Name}: nobody is named yet, so it has no day here; {Numbers.Count(asked, "animal is", "animals are")} asked about, and day 0 would be {Dates.Long(method.Days.Start, plan.Today.Year)}.";
                }
                else if (method.Days.Start < plan.Today)
                {
                    yield return $"Session {session.Number}, {method.Method.Name}: its day 0, {Dates.Long(method.Days.Start, plan.Today.Year)}, is past.";
                }
            }
        }
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
            EntryKind.Treatment or EntryKind.DonorTreatment => $"{entry.Subject}{session}{Animals(entry)}: {Step(entry.Step!)}",
            EntryKind.HeatWatch => $"{entry.Subject}{session}{Animals(entry)}: watch for heat",
            EntryKind.Collection => (aims.Embryos == EmbryoOrigin.Flushed ? "Flush" : "Collection of eggs") + session,
            EntryKind.Transfer => "Transfer of embryos" + session,
            EntryKind.StartOfMating => "Planned start of mating",
            _ => $"Calves due{session}",
        };
    }

    private static string Animals(PlanEntry entry) => entry.Animals is not { } animals ? ""
        : ", " + (entry.Kind == EntryKind.DonorTreatment ? Numbers.Count(animals, "donor", "donors") : Numbers.Count(animals, "animal", "animals"));

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
