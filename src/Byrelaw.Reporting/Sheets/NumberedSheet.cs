using Byrelaw.Planning.Sheets;
using Byrelaw.Records.Ledger;
using Byrelaw.Records.Workbooks;

namespace Byrelaw.Reporting.Sheets;

/// <summary>A sheet with its number: <c>H1004-5b20e1</c>, the work, month and day, and the start of the SHA-256 of its rows, the cells of <c>sheet</c> left empty.</summary>
/// <param name="Drawn">The sheet.</param>
/// <param name="Number">Its number.</param>
/// <param name="IsRehearsal">Whether it only rehearses: it stands in no ledger, and nobody is to be given anything by it.</param>
public sealed record NumberedSheet(DrawnSheet Drawn, string Number, bool IsRehearsal)
{
    /// <summary>What stands before the number of a rehearsal.</summary>
    public const string Rehearsal = "REHEARSAL";

    /// <summary>Numbers a sheet. The same sheet drawn again has the same number; where the ledger has that number for another, or for one that is used up or void since, it is longer.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="drawn">The sheet.</param>
    /// <param name="ledger">The sheets that were written; null for none.</param>
    /// <param name="isUsedUp">Whether somebody said something of such a sheet already, or it is another programme's: a paper with its number would be closed before it is used.</param>
    /// <param name="isRehearsal">Whether it only rehearses.</param>
    public static NumberedSheet Of(Plan plan, DrawnSheet drawn, SheetLedger? ledger, Func<Sheet, bool> isUsedUp, bool isRehearsal = false)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(drawn);
        ArgumentNullException.ThrowIfNull(isUsedUp);
        var number = SheetNumber.Of(drawn.Work, drawn.Morning.Date, SheetCsv.Of(SheetCsv.Rows(plan, drawn, "")), ledger, other => !IsSame(other, drawn) || isUsedUp(other));
        return new NumberedSheet(drawn, isRehearsal ? $"{Rehearsal} {number}" : number, isRehearsal);
    }

    /// <summary>The name of its files, without an ending.</summary>
    public string FileName => Number.Replace(' ', '-');

    /// <summary>Its files: a page as Markdown and as HTML, and the rows to fill in as CSV and as a workbook.</summary>
    public IEnumerable<FileToWrite> Files(Plan plan)
    {
        var (page, rows, name) = (DrawnPage.Of(plan, this), SheetCsv.Rows(plan, Drawn, Number).ToList(), FileName);
        foreach (var file in Report.Alone(page))
        {
            yield return new FileToWrite(name + Path.GetExtension(file.Path), Encoding.UTF8.GetBytes(file.Text));
        }

        yield return new FileToWrite(name + ".csv", Encoding.UTF8.GetBytes(SheetCsv.Of(rows)));
        yield return new FileToWrite(name + ".xlsx", TextWorkbook.Of("sheet", rows));
    }

    /// <summary>As the terminal shows it.</summary>
    public string OnTerminal(Plan plan, Ink ink) => DrawnPage.OnTerminal(plan, this, ink);

    private static bool IsSame(Sheet other, DrawnSheet drawn) => other.For == drawn.Morning.Date && other.Rows.Length == drawn.Rows.Length
        && other.Rows.Zip(drawn.Rows).All(pair => pair.First.Animal == pair.Second.Number && pair.First.Writes.SequenceEqual(pair.Second.Writes));
}
