namespace Byrelaw.Reporting.Sheets;

/// <summary>Says which sheets are not wholly on record, and where their ledger cannot be trusted.</summary>
public static class OpenSheetWords
{
    /// <summary>A sentence a sheet: <c>Sheet H1004-5b20e1 is open: rows 4, 7 and 9.</c></summary>
    public static IEnumerable<string> Of(Herd herd)
    {
        ArgumentNullException.ThrowIfNull(herd);
        if (herd.LedgerIsBroken)
        {
            yield return Broken;
        }

        foreach (var sheet in herd.OpenRows.GroupBy(row => row.Sheet.Number))
        {
            var rows = sheet.Select(row => $"{row.Row.Row}").Distinct().ToList();
            yield return $"Sheet {sheet.Key} is open: {(rows.Count == 1 ? "row" : "rows")} {Phrases.And(rows)}. What stands there may have been done since, and is in doubt until it is on record.";
        }
    }

    /// <summary>What is said where it was changed, or is gone though rows name its sheets.</summary>
    public const string Broken = "The ledger of sheets was changed, or is not whole: nobody knows which sheets are out. What sheets write counts as complete only up to the day before its last line that holds. "
        + "Put the ledger back as it was, from a copy.";

    /// <summary>Where a row of a sheet stands: <c>row 4 of sheet H1004-5b20e1</c>.</summary>
    public static string Place(RecordPlace place) => $"row {place.Line} of {place.File}";
}
