using Byrelaw.Planning.Naming;
using Byrelaw.Planning.Sheets;
using Byrelaw.Reporting.Plans;

namespace Byrelaw.Reporting.Sheets;

/// <summary>Says what a morning is, and what stands at the head of its page.</summary>
internal static class SheetWords
{
    /// <summary><c>Sunday 4 October 2026 · session 1 · Progesterone insert, day 0</c>.</summary>
    public static string Title(MorningSheet sheet) => $"{Dates.WithWeekday(sheet.Date)} · session {sheet.Session.Number} · {What(sheet)}";

    /// <summary><c>Progesterone insert, day 0</c>; <c>scans, scores and weights</c>.</summary>
    public static string What(MorningSheet sheet) => sheet switch
    {
        HormoneSheet { Rows.IsEmpty: true } asked => Phrases.And([.. asked.ToAsk.Select(animal => $"{animal.Method}, day 0").Distinct()]),
        HormoneSheet hormones => Phrases.And([.. hormones.Rows.OrderBy(row => row.Day).Select(Treatment).Distinct()]),
        FindingSheet { InTheYards: true } found => $"in the yards: {Kinds(found)}",
        FindingSheet found => $"samples: {Kinds(found)}",
        _ => "transfer of embryos",
    };

    /// <summary>Where its page lies in the plan's folder, without an ending.</summary>
    public static string Path(MorningSheet sheet) => $"sheets/{LocalDatePattern.Iso.Format(sheet.Date)}-session-{sheet.Session.Number}-{Keys.Snake($"{sheet.Work}")}";

    /// <summary>That it is none to work by, and until when the records reach.</summary>
    public static string Preview(MorningSheet sheet) => $"A preview: it has no boxes, and {(sheet.Work is SheetWork.Hormones ? "nobody is given anything by it" : "nobody works by it")}. Draw it up again that morning: {Reach(sheet)}.";

    /// <summary>What stands over its preview.</summary>
    public static PageHead Head(Plan plan, MorningSheet sheet) => new(PlanHead.Name(plan), new("preview of", Dates.Long(sheet.Date)), Reached(plan, sheet), new("void after", "the next record")) { Devices = DeviceWords.Of(plan.Draft) };

    /// <summary>How far the records reach of the kinds that the sheet goes by.</summary>
    public static HeadFact Reached(Plan plan, MorningSheet sheet) => sheet.RecordsEnd is { } end ? new("records to", Dates.Long(end)) : ReachWords.Fact(plan.Draft.Herd);

    /// <summary>Both danger lists, and whether anybody of them stands on the sheet.</summary>
    public static Wording InCalf(MorningSheet sheet, IEnumerable<string> here) => InCalf(sheet.InCalf, here);

    /// <summary>More than so many are no list that anybody reads: a promise is missing for all of them, and those who stand here are named.</summary>
    private const int ForAll = 60;

    /// <summary>The same of a day.</summary>
    public static Wording InCalf(InCalfOnDay day, IEnumerable<string> here)
    {
        var held = day.Take.Concat(day.MayBe).ToHashSet(StringComparer.Ordinal);
        var standing = here.Where(held.Contains).Distinct().Order(AnimalNumberOrder.Instance).ToList();
        var told = held.Count == 0 ? "" : standing.Count == 0 ? "None of them stands here." : $"Here: {Phrases.And(standing)}.";
        return $"{Wording.Bold("Take as in calf")}: {Listed(day.Take)}. {Wording.Bold("May be in calf")}: {(day.MayBe.Length > ForAll ? $"{day.MayBe.Length} others, for the records do not say of them that they are not" : Listed(day.MayBe))}. {told}";
    }

    /// <summary>What she is asked about for: <c>Progesterone insert, session 3</c>; <c>Natural heat, session 1: only watched, takes no place</c>.</summary>
    public static string For(MorningSheet sheet, FindingRow row) =>
        $"{(row.Method.Length == 0 ? "collection of a donor" : row.Method)}, session {sheet.Session.Number}{(row.IsWatched ? ": only watched, takes no place" : "")}";

    /// <summary>The same, where it is the same of all; else null.</summary>
    public static string? SameFor(FindingSheet sheet) => sheet.Rows.Select(row => For(sheet, row)).Distinct().ToList() is [var only] ? only : null;

    /// <summary>Over the spares of a sheet: <c>Spare, for whoever is left out: the first 3 of 8</c>.</summary>
    public static string Spare(MorningSheet sheet, int here) =>
        $"Spare, for whoever is left out: {(here < sheet.Session.Spares.Length ? $"the first {here} of {sheet.Session.Spares.Length}" : "the best first")}";

    /// <summary>Decisions of the session whose day is past in silence.</summary>
    public static string Silence(Plan plan, NamedSession session) => DecisionWords.Silent(plan).Where(task => task.Session == session.Number).Select(task => task.Task.Name).ToList() is { Count: > 0 } silent
        ? $"{Phrases.And(silent)}: {DecisionWords.Silence}" : "";

    private static string Treatment(HormoneRow row) => row.NotGiven?.DeviceSince is null ? $"{row.Method.Name}, day {row.Day}" : "devices out";

    private static string Kinds(FindingSheet sheet) => Phrases.And([.. sheet.Rows.SelectMany(row => row.Records).Select(record => record.Kind.Name).Distinct()]);

    private static string Listed(ImmutableArray<string> numbers) => numbers.IsEmpty ? "none" : string.Join(", ", numbers);

    private static string Reach(MorningSheet sheet) => sheet.RecordsEnd switch
    {
        null => "no record with a date could be read",
        { } end when end >= sheet.Date => "records reach that day now",
        { } end => $"records end {Numbers.Count(Period.DaysBetween(end, sheet.Date), "day", "days")} before it",
    };
}
