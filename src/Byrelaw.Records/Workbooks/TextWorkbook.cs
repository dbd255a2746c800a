namespace Byrelaw.Records.Workbooks;

/// <summary>A table as a workbook of one sheet. All cells are texts, so that a day stays the day that is written there.</summary>
public static class TextWorkbook
{
    /// <summary>The whole workbook.</summary>
    /// <param name="name">The sheet's name.</param>
    /// <param name="rows">The rows, headings first.</param>
    public static byte[] Of(string name, IEnumerable<string[]> rows) => WorkbookWriter.Of([(name, rows)]);
}
