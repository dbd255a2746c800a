using SpreadCheetah;
using SpreadCheetah.Worksheets;

namespace Byrelaw.Records.Workbooks;

/// <summary>Writes rows of texts as sheets of a workbook.</summary>
internal static class WorkbookWriter
{
    /// <summary>The whole workbook.</summary>
    public static byte[] Of(IEnumerable<(string Name, IEnumerable<string[]> Rows)> sheets)
    {
        using var whole = new MemoryStream();
        Write(whole, sheets).GetAwaiter().GetResult();
        return whole.ToArray();
    }

    private static async Task Write(Stream stream, IEnumerable<(string Name, IEnumerable<string[]> Rows)> sheets)
    {
        await using var workbook = await Spreadsheet.CreateNewAsync(stream).ConfigureAwait(false);
        foreach (var (name, rows) in sheets)
        {
            // The headings stay in sight.
            await workbook.StartWorksheetAsync(name, new WorksheetOptions { FrozenRows = 1 }).ConfigureAwait(false);
            foreach (var row in rows)
            {
                await workbook.AddRowAsync(Array.ConvertAll(row, cell => cell.Length == 0 ? new DataCell() : new DataCell(cell))).ConfigureAwait(false);
            }
        }

        await workbook.FinishAsync().ConfigureAwait(false);
    }
}
