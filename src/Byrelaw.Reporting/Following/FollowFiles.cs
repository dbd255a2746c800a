using Byrelaw.Planning.Following;
using Byrelaw.Reporting.Calendar;

namespace Byrelaw.Reporting.Following;

/// <summary>The files of what is followed: a page, a table for a spreadsheet, and a calendar.</summary>
public static class FollowFiles
{
    /// <summary>All of them.</summary>
    public static IEnumerable<FileToWrite> Of(FollowReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        foreach (var file in Report.Alone(FollowPage.Of(report)).Append(new ReportFile("follow.csv", Table(report))).Append(new ReportFile("follow.ics", Calendar(report))))
        {
            yield return new FileToWrite(file.Path, Encoding.UTF8.GetBytes(file.Text));
        }
    }

    /// <summary>As the terminal shows it.</summary>
    public static string OnTerminal(FollowReport report, Ink ink) => FollowPage.OnTerminal(report, ink);

    private static string Table(FollowReport report) => string.Concat(
        report.All.Select(one => Csv.Record(
            one.Number, one.Embryo ?? "", Iso(one.Dates.Transfer), one.Dates.Age is { } age ? $"{age}" : "", FollowWords.Of(one.State), Iso(one.Tested), Iso(one.Returned), Iso(one.Dates.ReturnWatch.Start), Iso(one.Dates.ReturnWatch.End),
            Iso(one.Dates.FirstCheck.Start), Iso(one.Dates.FirstCheck.End), Iso(one.Dates.ClearedByHandFrom), Iso(one.Dates.SecondCheck.Start), Iso(one.Dates.SecondCheck.End), Iso(one.Dates.DryOff), Iso(one.Dates.Due), Iso(one.Dates.LongFrom)))
        .Prepend(Csv.Record("animal", "embryo", "transfer", "age", "state", "tested", "returned", "return watch from", "to", "first check from", "to", "cleared by hand from", "second check from", "to", "dry off", "due", "long from")));

    private static string Calendar(FollowReport report) => CalendarText.Of($"{report.Draft.Rulebook.Programme!.Name}, after transfer", report.Today, report.All.SelectMany(Entries));

    /// <summary>What is still to come of her.</summary>
    private static IEnumerable<CalendarEvent> Entries(Followed one)
    {
        var name = one.Embryo is { } label ? $"{one.Number} ({label})" : one.Number;
        if (one.State is FollowState.Waiting or FollowState.ToCheck or FollowState.Overdue)
        {
            yield return Entry("return", one.Dates.ReturnWatch, $"{name}: watch for a return", "A heat is no proof that she is empty. Scan first; no prostaglandin, no pipette.");
            yield return Entry("first-check", one.Dates.FirstCheck, $"{name}: first check, not by hand", "");
        }

        if (one.State is FollowState.Waiting or FollowState.ToCheck or FollowState.Overdue or FollowState.Pregnant)
        {
            yield return Entry("second-check", one.Dates.SecondCheck, $"{name}: second check", "");
            if (one.Dates.Calving is { } calving)
            {
                yield return Entry("dry-off", new(one.Dates.DryOff!.Value, one.Dates.DryOff.Value), $"{name}: dry off, if in calf", "");
                yield return Entry("calving", calving, $"{name}: calving, due {Dates.Long(one.Dates.Due!.Value)}, if in calf", $"Long from {Dates.Long(one.Dates.LongFrom!.Value)}: call the vet.");
            }
        }

        CalendarEvent Entry(string what, DateInterval days, string title, string text) => new($"{what}-{one.Number}-{Iso(one.Dates.Transfer)}", days.Start, days.End, title, text);
    }

    private static string Iso(LocalDate? day) => day is { } known ? LocalDatePattern.Iso.Format(known) : "";
}
