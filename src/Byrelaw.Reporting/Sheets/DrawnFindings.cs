using Byrelaw.Planning.Sheets;
using Byrelaw.Reporting.Plans;

namespace Byrelaw.Reporting.Sheets;

/// <summary>The rows of a sheet of scans, scores and weights, or of samples: what is found is written, with how and by whom. A tick is no test.</summary>
internal static class DrawnFindings
{
    public static void Add(DocumentBuilder part, Plan plan, DrawnSheet drawn, FindingSheet sheet)
    {
        part.Sentence(sheet.InTheYards
                ? "What is found is written, with how it was found and by whom. A tick is no test, and an empty place means that nobody looked."
                : "A tick says that the sample was taken; its result comes from the laboratory and is written when it comes.")
            .Sentence(SheetWords.InCalf(sheet, sheet.Rows.Select(row => row.Who.Number)))
            .Sentence(SheetWords.SameFor(sheet) is { } same ? $"For {same}." : "")
            .Bullets(AskedWords.Waiting(sheet.Rows.SelectMany(row => row.Records).SelectMany(record => record.Waiting)));
        var table = new Table(sheet.InTheYards ? "To find out in the yards, by mob" : "To sample, by mob", ["row", .. SheetRows.Columns, sheet.InTheYards ? "found" : "sample taken", "how, and by whom", "not done: why", .. SheetWords.SameFor(sheet) is null ? new Column[] { "for" } : []]) { IsForTheYards = true };
        foreach (var row in drawn.Rows.Where(row => row is { Finding: not null, TakenOff: null }))
        {
            var records = row.Finding!.Records;
            table.Add([
                $"{row.Row}", .. SheetRows.Of(plan, row.Who!),
                Phrases.And([.. records.Select(record => sheet.InTheYards ? $"{record.Kind.Name}: {Found(record.Kind)}" : $"{DrawnPage.Box} {record.Kind.Name}{(record.MoreOfTheMob > 0 ? $" (of at least {record.MoreOfTheMob} of the mob not sampled yet)" : "")}")]),
                string.Join("; ", records.Select(record => How(plan, record.Kind)).Where(how => how.Length > 0).Distinct()) is { Length: > 0 } how ? how : DrawnPage.Blank,
                DrawnPage.Blank,
                .. SheetWords.SameFor(sheet) is null ? new Wording[] { SheetWords.For(sheet, row.Finding) } : [],
            ]);
        }

        part.Table(table);
    }

    /// <summary>The answers that it may have, one of which is ringed; of a measure, its scale or unit.</summary>
    private static string Found(Kind kind) => kind switch
    {
        TestKind test => string.Join(" / ", test.Answers),
        MeasureKind { Scale: { } scale } => $"{DrawnPage.Blank} ({Numbers.Of(scale.From)} to {Numbers.Of(scale.To)})",
        MeasureKind { Unit: { } unit } => $"{DrawnPage.Blank} {unit.Symbol}",
        _ => DrawnPage.Blank,
    };

    /// <summary>The method that the farm's file says, to be struck out where it was another; and who did it.</summary>
    private static string How(Plan plan, Kind kind) => string.Join(", ", kind.Details.Select(detail => NameFolding.Fold(detail.Name) switch
    {
        "method" => plan.Draft.Rulebook.Records?.Blanks.FirstOrDefault(blank => blank.Kind.Id == kind.Id && kind.Details[blank.Place] == detail)?.Value is { } value ? $"{value} {DrawnPage.Blank}" : string.Join(" / ", detail.Values),
        "done by" => $"by {DrawnPage.Blank}",
        "side" => string.Join(" / ", detail.Values),
        _ => "",
    }).Where(text => text.Length > 0));
}
