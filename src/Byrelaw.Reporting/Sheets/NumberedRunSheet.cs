using Byrelaw.Planning.Pairing;
using Byrelaw.Records.Ledger;
using Byrelaw.Records.Workbooks;

namespace Byrelaw.Reporting.Sheets;

/// <summary>A run sheet with its number: <c>T1020-7c3e05</c>.</summary>
/// <param name="Drawn">The sheet.</param>
/// <param name="Number">Its number.</param>
/// <param name="IsRehearsal">Whether it only rehearses: it stands in no ledger, and nobody is given an embryo by it.</param>
public sealed record NumberedRunSheet(RunSheet Drawn, string Number, bool IsRehearsal)
{
    /// <summary>Who said that all is written down; null where nobody gave a name.</summary>
    public string? By { get; init; }

    /// <summary>Numbers one.</summary>
    /// <param name="drawn">The sheet.</param>
    /// <param name="ledger">The sheets that were written; null for none.</param>
    /// <param name="isUsedUp">Whether somebody said something of such a sheet already, or it is another programme's.</param>
    /// <param name="isRehearsal">Whether it only rehearses.</param>
    public static NumberedRunSheet Of(RunSheet drawn, SheetLedger? ledger, Func<Sheet, bool> isUsedUp, bool isRehearsal = false)
    {
        ArgumentNullException.ThrowIfNull(drawn);
        var number = SheetNumber.Of(RunSheet.Work, drawn.Day.Day, SheetCsv.Of(RunSheetCsv.Rows(drawn, "")), ledger, other => !IsSame(other, drawn) || isUsedUp(other));
        return new NumberedRunSheet(drawn, isRehearsal ? $"{NumberedSheet.Rehearsal} {number}" : number, isRehearsal);
    }

    /// <summary>The name of its files, without an ending.</summary>
    public string FileName => Number.Replace(' ', '-');

    /// <summary>Its files: a page as Markdown and as HTML, and the rows to fill in as CSV and as a workbook.</summary>
    public IEnumerable<FileToWrite> Files()
    {
        var rows = RunSheetCsv.Rows(Drawn, Number).ToList();
        foreach (var file in Report.Alone(RunSheetPage.Of(this)))
        {
            yield return new FileToWrite(FileName + Path.GetExtension(file.Path), Encoding.UTF8.GetBytes(file.Text));
        }

        yield return new FileToWrite(FileName + ".csv", Encoding.UTF8.GetBytes(SheetCsv.Of(rows)));
        yield return new FileToWrite(FileName + ".xlsx", TextWorkbook.Of("sheet", rows));
    }

    /// <summary>As the terminal shows it.</summary>
    public string OnTerminal(Ink ink) => RunSheetPage.OnTerminal(this, ink);

    private static bool IsSame(Sheet other, RunSheet drawn) => other.For == drawn.Day.Day && other.Rows.Length == drawn.Rows.Length
        && other.Rows.Zip(drawn.Rows).All(pair => pair.First.Animal == pair.Second.Number && pair.First.Embryo == pair.Second.Embryo && pair.First.Writes.SequenceEqual(pair.Second.Writes));
}
