using Byrelaw.Planning.Sheets;
using Byrelaw.Reporting.Calendar;
using Byrelaw.Reporting.Sheets;

namespace Byrelaw.Reporting.Plans;

/// <summary>All files of a plan's report: the whole plan, one page for the farmer, a page for each morning, and the calendar (RFC 5545).</summary>
public static class PlanReport
{
    /// <summary>The files, made one by one.</summary>
    public static IEnumerable<ReportFile> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        foreach (var file in PageFiles.Files)
        {
            yield return file;
        }

        var sheets = MorningSheets.Of(plan);
        foreach (var file in new[] { PlanPage.Of(plan, sheets), ExpectationsPage.Of(plan) }.Concat(sheets.Select(sheet => SheetPage.Of(plan, sheet))).SelectMany(Report.Both))
        {
            yield return file;
        }

        yield return new ReportFile("calendar.ics", CalendarText.Of(PlanHead.Name(plan), plan.Today, plan.Calendar.Entries.Select(entry => Event(plan, entry))));
    }

    /// <summary>The preview of one morning by itself, as a page to look at.</summary>
    public static IEnumerable<FileToWrite> Preview(Plan plan, MorningSheet sheet)
    {
        var page = SheetPage.Of(plan, sheet, isInPlan: false);
        return Report.Alone(page with { Path = $"preview-{Path.GetFileName(page.Path)}" }).Select(file => new FileToWrite(file.Path, Encoding.UTF8.GetBytes(file.Text)));
    }

    private static CalendarEvent Event(Plan plan, PlanEntry entry) => new(
        entry.Id, entry.From, entry.To, EntryWords.What(entry, PlanHead.Aims(plan)),
        string.Join('\n', new[] { entry.Task is { } task ? $"For {TaskWords.For(task)}." : "", EntryWords.Beware(entry) }.Where(words => words.Length > 0)));
}

/// <summary>What several parts of a plan's pages say alike.</summary>
internal static class PlanHead
{
    /// <summary>What stands over every page of a plan.</summary>
    public static PageHead Of(Plan plan) => new(Name(plan), new("planned on", Dates.Long(plan.Today)), ReachWords.Fact(plan.Draft.Herd), new("void after", "the next record")) { Devices = DeviceWords.Of(plan.Draft) };

    /// <summary>The programme.</summary>
    public static Aims Aims(Plan plan) => plan.Draft.Rulebook.Programme!.Aims;

    /// <summary>The programme's name.</summary>
    public static string Name(Plan plan) => plan.Draft.Rulebook.Programme!.Name;
}
