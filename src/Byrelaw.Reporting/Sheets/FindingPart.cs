using Byrelaw.Planning.Sheets;
using Byrelaw.Reporting.Plans;

namespace Byrelaw.Reporting.Sheets;

/// <summary>A morning of scans, scores and weights, or of samples.</summary>
internal static class FindingPart
{
    public static void Add(DocumentBuilder part, Plan plan, FindingSheet sheet) => part
        .Sentence($"{Numbers.Count(sheet.Rows.Length, "animal is", "animals are")} asked about, and nobody is treated before the answer stands in the book. A tick is no test: an answer is written, with how it was found and by whom.")
        .Sentence(SheetWords.InCalf(sheet, sheet.Rows.Select(row => row.Who.Number)))
        .Sentence(SheetWords.SameFor(sheet) is { } same ? $"For {same}." : "")
        .Bullets(AskedWords.Waiting(sheet.Rows.SelectMany(row => row.Records).SelectMany(record => record.Waiting)))
        .Table(SheetRows.Table(plan, sheet.InTheYards ? "To find out in the yards, by mob" : "To sample, by mob", ["what", "counts on", .. SheetWords.SameFor(sheet) is null ? new Column[] { "for" } : []], sheet.Rows, row => row.Who,
            row => [Phrases.And([.. row.Records.Select(What)]), Days(row), .. SheetWords.SameFor(sheet) is null ? new Wording[] { SheetWords.For(sheet, row) } : []]));

    private static string What(WorkToDo record) => record.Kind.Name + (record.MoreOfTheMob > 0 ? $" (of at least {record.MoreOfTheMob} of the mob not sampled yet)" : "");

    private static string Days(FindingRow row) => string.Join("; ", row.Records.GroupBy(Said).Select(alike => row.Records.Length == alike.Count() ? alike.Key : $"{Phrases.And([.. alike.Select(one => one.Kind.Name)])}: {alike.Key}"));

    private static string Said(WorkToDo record) => Phrases.And([.. record.Days.Select(run => Dates.Range(run.Start, run.End))]);
}
