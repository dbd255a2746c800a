using Byrelaw.Planning.Sheets;

namespace Byrelaw.Reporting.Sheets;

/// <summary>A day of transfer: its run sheet, without embryos as yet.</summary>
internal static class TransferPart
{
    public static void Add(DocumentBuilder part, Plan plan, TransferSheet sheet)
    {
        part.Sentence(sheet.Rows.IsEmpty ? "Nobody who is named fits this day." : $"{Numbers.Count(sheet.Rows.Length, "recipient fits", "recipients fit")} this day by a heat that is expected, if nothing happens before. Which embryo goes into which is said on the day.")
            .Sentence(sheet.Heats.IsEmpty ? "" : $"Heats that fit: {Phrases.And([.. Days(sheet.Heats)])}.")
            .Sentence(SheetWords.InCalf(sheet, sheet.Rows.Concat(sheet.Spares).Select(row => row.Who.Number).Concat(sheet.Watched.Select(animal => animal.Number))))
            .Table(Rows(plan, sheet, "Recipients, by mob", sheet.Rows))
            .Table(Rows(plan, sheet, SheetWords.Spare(sheet, sheet.Spares.Length), sheet.Spares, byMob: false))
            .Sentence(sheet.Watched.IsEmpty ? "" : $"Watched for a heat of their own, and fit this day if it falls on one of these days: {string.Join(", ", sheet.Watched.Select(animal => animal.Number))}.");
        if (!sheet.ToAsk.IsEmpty)
        {
            part.Heading(2, "To ask about first, and given nothing before").Bullets(SheetRows.ToAsk(sheet.ToAsk, sheet.Date.Year));
        }
    }

    private static Table Rows(Plan plan, TransferSheet sheet, string caption, IEnumerable<TransferRow> rows, bool byMob = true) => SheetRows.Table(
        plan, caption, ["made ready by", "heat expected", "her day then", "beware"], rows, row => row.Who,
        row => [row.Method, Phrases.And([.. Days(row.Heats)]), Phrases.And([.. row.Heats.Select(heat => $"{Period.DaysBetween(heat, sheet.Date)}").Order(StringComparer.Ordinal)]), SheetRows.Waived(sheet.Session, row.Who)], byMob);

    private static IEnumerable<string> Days(ImmutableArray<LocalDate> heats)
    {
        for (var i = 0; i < heats.Length;)
        {
            var end = i;
            while (end + 1 < heats.Length && heats[end + 1] == heats[end].PlusDays(1))
            {
                end++;
            }

            yield return Dates.Range(heats[i], heats[end]);
            i = end + 1;
        }
    }
}
