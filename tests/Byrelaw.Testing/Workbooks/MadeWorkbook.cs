using System.Globalization;
using System.IO.Compression;
using System.Text;

namespace Byrelaw.Testing.Workbooks;

/// <summary>A workbook put together part by part (ECMA-376), so that it can be wrong in every way.</summary>
public static class MadeWorkbook
{
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    /// <summary>Sheets by name, each with the text of its rows; style 1 is a date.</summary>
    public static byte[] Of(params (string Name, string Rows)[] sheets) => Zip(
    [
        ("[Content_Types].xml", $"<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"><Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/><Default Extension=\"xml\" ContentType=\"application/xml\"/><Override PartName=\"/xl/workbook.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml\"/></Types>"),
        ("_rels/.rels", $"<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship Id=\"r1\" Type=\"{Office}/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>"),
        ("xl/workbook.xml", $"<workbook xmlns=\"{Main}\" xmlns:r=\"{Office}\"><sheets>{string.Concat(sheets.Select((sheet, i) => $"<sheet name=\"{sheet.Name}\" sheetId=\"{i + 1}\" r:id=\"s{i + 1}\"/>"))}</sheets></workbook>"),
        ("xl/_rels/workbook.xml.rels", $"<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">{string.Concat(sheets.Select((_, i) => $"<Relationship Id=\"s{i + 1}\" Type=\"{Office}/worksheet\" Target=\"worksheets/sheet{i + 1}.xml\"/>"))}<Relationship Id=\"st\" Type=\"{Office}/styles\" Target=\"styles.xml\"/></Relationships>"),
        ("xl/styles.xml", $"<styleSheet xmlns=\"{Main}\"><cellXfs count=\"2\"><xf numFmtId=\"0\"/><xf numFmtId=\"14\" applyNumberFormat=\"1\"/></cellXfs></styleSheet>"),
        .. sheets.Select((sheet, i) => ($"xl/worksheets/sheet{i + 1}.xml", $"<worksheet xmlns=\"{Main}\"><sheetData>{sheet.Rows}</sheetData></worksheet>")),
    ]);

    /// <summary>Sheets from lines of text: <c>sheet NAME</c> starts one, other lines are rows with commas between cells, all of them texts.</summary>
    public static byte[] OfText(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var sheets = new List<(string Name, StringBuilder Rows, int Count)>();
        foreach (var line in text.Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.StartsWith("sheet ", StringComparison.Ordinal))
            {
                sheets.Add((line["sheet ".Length..], new StringBuilder(), 0));
            }
            else
            {
                var (name, rows, count) = sheets[^1];
                rows.Append(Row(count + 1, line.Split(',')));
                sheets[^1] = (name, rows, count + 1);
            }
        }

        return Of([.. sheets.Select(sheet => (sheet.Name, sheet.Rows.ToString()))]);
    }

    /// <summary>A row of cells with texts; one such as <c>#N/A</c> is an error.</summary>
    public static string Row(int number, params string[] cells) => $"<row r=\"{number}\">{string.Concat(cells.Select((cell, i) => cell.StartsWith('<') ? cell : cell.StartsWith('#') ? $"<c r=\"{(char)('A' + i)}{number}\" t=\"e\"><v>{cell}</v></c>" : Text((char)('A' + i), number, cell)))}</row>";

    /// <summary>A text in its place.</summary>
    public static string Text(char column, int row, string text) => text.Length == 0 ? "" : $"<c r=\"{column}{row}\" t=\"inlineStr\"><is><t>{text}</t></is></c>";

    /// <summary>A workbook with a text of one of its parts put in place of another.</summary>
    public static byte[] With(byte[] workbook, string part, string from, string to) =>
        Zip([.. Parts(workbook).Select(one => one.Name == part ? (one.Name, one.Text.Replace(from, to, StringComparison.Ordinal)) : one)]);

    /// <summary>The parts of a packed file.</summary>
    public static (string Name, string Text)[] Parts(byte[] workbook)
    {
        using var zip = new ZipArchive(new MemoryStream(workbook));
        return [.. zip.Entries.Select(entry =>
        {
            using var reader = new StreamReader(entry.Open());
            return (entry.FullName, reader.ReadToEnd());
        })];
    }

    /// <summary>Parts in a packed file.</summary>
    public static byte[] Zip((string Name, string Text)[] parts)
    {
        using var whole = new MemoryStream();
        using (var zip = new ZipArchive(whole, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, text) in parts)
            {
                using var part = zip.CreateEntry(name, CompressionLevel.Fastest).Open();
                part.Write(Encoding.UTF8.GetBytes(text));
            }
        }

        return whole.ToArray();
    }
}
