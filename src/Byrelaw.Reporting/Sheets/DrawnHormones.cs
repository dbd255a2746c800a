using Byrelaw.Planning.Naming;
using Byrelaw.Planning.Sheets;
using Byrelaw.Reporting.Plans;

namespace Byrelaw.Reporting.Sheets;

/// <summary>The rows of a sheet of hormones and devices, and the blanks that make it a medicine record. No dose stands there: label and vet.</summary>
internal static class DrawnHormones
{
    public static void Add(DocumentBuilder part, Plan plan, DrawnSheet drawn, HormoneSheet sheet)
    {
        DrawnRow[] given = [.. drawn.Rows.Where(row => row is { IsGiven: true, IsSpare: false })], spare = [.. drawn.Rows.Where(row => row.IsSpare)];
        DrawnRow[] outOnly = [.. drawn.Rows.Where(row => row is { Hormone: not null, IsGiven: false, IsSpare: false, TakenOff: null })];
        part.Sentence(Wording.Bold("No box, no needle."))
            .Sentence(drawn.Short.IsEmpty ? "" : $"{ShortWords.Of(drawn.Short, sheet.Date)} So nobody has a box for a hormone: only devices come out.")
            .Sentence($"Ordered by: {DrawnPage.Blank} Given by: {DrawnPage.Blank}")
            .Bullets(HormonePart.Cautions(sheet))
            .Sentence(SheetWords.InCalf(sheet, drawn.Rows.Select(row => row.Number)))
            .Gap().Table(Rows(plan, sheet, "To treat, by mob", given))
            .Gap().Sentence(outOnly.Length == 0 ? "" : Wording.Bold("Device out, and no hormone")).Table(OutOnly(plan, sheet, outOnly))
            .Gap().Sentence(spare.Length == 0 ? "" : Wording.Bold("Spare, for whoever is left out")).Table(Rows(plan, sheet, "The best first", spare)).Gap();
        DevicesCounted(part, given, outOnly);
        part.Gap().Table(MedicineRecord(given.Concat(spare))).Gap();
        if (!sheet.ToAsk.IsEmpty)
        {
            part.Heading(2, "To ask about first, and not treated before").Bullets(SheetRows.ToAsk(sheet.ToAsk, sheet.Date.Year));
        }

        part.Sentence("“Looked up” is a tick and no test: whoever is scanned this morning has her result written in the file, with how it was found and by whom. No dose stands here: label and vet.")
            .Sentence(drawn.Short.IsEmpty ? HormonePart.ComesOut(sheet) : "")
            .Sentence(drawn.Short.IsEmpty ? HormonePart.ToKeep(sheet) : "");
    }

    private static Table Rows(Plan plan, HormoneSheet sheet, string caption, IEnumerable<DrawnRow> rows)
    {
        var table = new Table(caption, ["row", .. SheetRows.Columns, "her day", "looked up", "what is done", "not done: why", "beware"]) { IsForTheYards = true };
        foreach (var row in rows)
        {
            table.Add([$"{row.Row}", .. SheetRows.Of(plan, row.Who!), HormonePart.Day(row.Hormone!), DrawnPage.Box, Done(row.Hormone!), DrawnPage.Blank, SheetRows.Waived(sheet.Session, row.Who!)]);
        }

        return table;
    }

    private static Table OutOnly(Plan plan, HormoneSheet sheet, IEnumerable<DrawnRow> rows)
    {
        var table = new Table("It comes out whatever else is said of her", ["row", .. SheetRows.Columns, "her day", "device", "hormone", "why"]) { IsForTheYards = true };
        foreach (var row in rows)
        {
            table.Add([$"{row.Row}", .. SheetRows.Of(plan, row.Who!), HormonePart.Day(row.Hormone!), $"{DrawnPage.Box} out {DrawnPage.Box} was gone", Wording.Bold("none"), HormonePart.Why(row.Hormone!)]);
        }

        return table;
    }

    /// <summary>A box for each thing that is done; of a device that comes out, whether it was there.</summary>
    private static string Done(HormoneRow row) => Phrases.And([.. row.Steps.Select(step => $"{DrawnPage.Box} {HormonePart.Step(step)}")]) + (row.DeviceComesOut ? $", {DrawnPage.Box} was gone" : "");

    private static void DevicesCounted(DocumentBuilder part, DrawnRow[] given, DrawnRow[] outOnly)
    {
        var (goIn, comeOut) = (given.Count(row => row.Hormone!.DeviceGoesIn), given.Concat(outOnly).Count(row => row.Hormone!.DeviceComesOut));
        part.Sentence(goIn == 0 ? "" : $"Devices in: {DrawnPage.Blank} of {goIn}").Sentence(comeOut == 0 ? "" : $"Devices out: {DrawnPage.Blank} of {comeOut}");
    }

    /// <summary>A row for each product.</summary>
    private static Table MedicineRecord(IEnumerable<DrawnRow> rows)
    {
        var table = new Table("Medicine record", "given", "product", "batch", "expires", "ordered by", "milk withheld until", "meat withheld until") { IsForTheYards = true };
        foreach (var text in rows.SelectMany(row => row.Hormone!.Steps).SelectMany(step => step.Text.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)).Distinct())
        {
            table.Add(text, DrawnPage.Blank, DrawnPage.Blank, DrawnPage.Blank, DrawnPage.Blank, DrawnPage.Blank, DrawnPage.Blank);
        }

        return table;
    }
}
