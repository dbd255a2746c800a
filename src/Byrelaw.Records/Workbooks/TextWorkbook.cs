using System.IO.Compression;

namespace Byrelaw.Records.Workbooks;

/// <summary>A table as a workbook of one sheet. All cells are texts, so that a day stays the day that is written there; and the same rows are the same bytes.</summary>
public static class TextWorkbook
{
    private static readonly DateTimeOffset NoTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>The whole workbook.</summary>
    /// <param name="name">The sheet's name.</param>
    /// <param name="rows">The rows, headings first.</param>
    public static byte[] Of(string name, IEnumerable<string[]> rows)
    {
        using var whole = new MemoryStream();
        using (var from = new ZipArchive(new MemoryStream(WorkbookWriter.Of([(name, rows)]), writable: false), ZipArchiveMode.Read))
        using (var to = new ZipArchive(whole, ZipArchiveMode.Create, leaveOpen: true))
        {
            // What writes it puts the time of writing beside each part, and into the one that says who made it.
            foreach (var part in from.Entries)
            {
                var copy = to.CreateEntry(part.FullName);
                copy.LastWriteTime = NoTime;
                using var written = new StreamWriter(copy.Open());
                using var text = new StreamReader(part.Open());
                written.Write(WithoutTime(text.ReadToEnd()));
            }
        }

        return whole.ToArray();
    }

    private static string WithoutTime(string part)
    {
        const string Begin = "<dcterms:created", End = "</dcterms:created>";
        return part.IndexOf(Begin, StringComparison.Ordinal) is >= 0 and var from && part.IndexOf(End, from, StringComparison.Ordinal) is >= 0 and var to ? part.Remove(from, to + End.Length - from) : part;
    }
}
