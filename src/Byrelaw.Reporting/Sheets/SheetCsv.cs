using Byrelaw.Planning.Sheets;
using Byrelaw.Records.Ledger;

namespace Byrelaw.Reporting.Sheets;

/// <summary>
/// A sheet as the rows that <c>record</c> reads: whose, of which day, and a column for each kind that it would write and for each detail of it. What is known stands
/// there already; what was done, and what was found, is for a person to fill in.
/// </summary>
internal static class SheetCsv
{
    private static readonly string[] First = ["sheet", "row", "date", "session", "animal", "done"];
    private static readonly string[] Last = ["reason", "note"];

    // The session has a column of its own.
    private const string Session = "session";

    /// <summary>The rows, headings first.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="drawn">The sheet.</param>
    /// <param name="number">What stands under <c>sheet</c>; empty to work out the number itself.</param>
    public static IEnumerable<string[]> Rows(Plan plan, DrawnSheet drawn, string number)
    {
        var columns = Columns(plan, drawn).ToList();
        yield return [.. First, .. columns.Select(column => column.Detail is { } detail ? $"{column.Kind.Name}: {detail.Name}" : column.Kind.Name), .. Last];
        foreach (var row in drawn.Rows)
        {
            yield return
            [
                number, $"{row.Row}", LocalDatePattern.Iso.Format(drawn.Morning.Date), $"{drawn.Morning.Session.Number}", row.Number, "",
                .. columns.Select(column => column.Detail is { } detail && row.Writes.FirstOrDefault(entry => entry.Kind == column.Kind.Name) is { } entry ? Known(plan, row, entry, column.Kind, detail) : ""),
                "", row.TakenOff is { } off ? $"taken off {off}" : "",
            ];
        }
    }

    /// <summary>The file's text.</summary>
    public static string Of(IEnumerable<string[]> rows) => string.Concat(rows.Select(row => Csv.Record(row)));

    /// <summary>The kinds that rows would write, in the order of declaration; whoever is treated may be scanned that morning too.</summary>
    private static IEnumerable<(Kind Kind, EntryDetail? Detail)> Columns(Plan plan, DrawnSheet drawn)
    {
        var written = drawn.Rows.SelectMany(row => row.Writes).Select(entry => entry.Kind).ToHashSet(StringComparer.Ordinal);
        var kinds = plan.Draft.Herd.Vocabulary.Kinds.Where(kind => written.Contains(kind.Name));
        if (drawn.Morning.Work == SheetWork.Hormones && plan.Draft.Herd.Vocabulary.FindKind("pregnancy test") is TestKind scan && !written.Contains(scan.Name))
        {
            kinds = kinds.Append(scan);
        }

        foreach (var kind in kinds)
        {
            yield return (kind, null);
            foreach (var detail in kind.Details.Where(detail => NameFolding.Fold(detail.Name) != Session))
            {
                yield return (kind, detail);
            }
        }
    }

    /// <summary>A donor's insemination on such a morning is no step of a hormone: its method is how she was served.</summary>
    private static bool IsTreated(DrawnRow row, Kind kind) => row.Hormone is not null && kind is EventKind { Marks: Marks.Treatment };

    /// <summary>What stands there already: her method, its day, what becomes of the device; of a test the method that the farm's file says.</summary>
    private static string Known(Plan plan, DrawnRow row, SheetEntry entry, Kind kind, EntryDetail detail) => NameFolding.Fold(detail.Name) switch
    {
        "method" when IsTreated(row, kind) => row.IsGiven ? row.Hormone!.Method.Name : "",
        "step" when IsTreated(row, kind) => $"{row.Hormone!.StepOnRecord}",
        "device" => entry.Device ?? "",
        _ => plan.Draft.Rulebook.Records?.Blanks.FirstOrDefault(blank => blank.Kind.Id == kind.Id && kind.Details[blank.Place] == detail)?.Value ?? "",
    };
}
