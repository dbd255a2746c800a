using System.IO.Compression;
using System.Xml;

namespace Byrelaw.Records.Workbooks;

/// <summary>
/// The sheets of a workbook (ECMA-376, Part 1: workbook.xml and its relationships), and of each the cells that hold something, and those that hold no value though something stands in
/// them: errors such as <c>#N/A</c>, and formulas that nobody worked out. What reads the values passes over them, so they are found first.
/// </summary>
internal static class WorkbookSheets
{
    private const string Office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private const int LongestError = 100;
    private const string StrictOffice = "http://purl.oclc.org/ooxml/officeDocument/relationships";

    private static readonly XmlReaderSettings Safe = new() { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null, IgnoreComments = true, IgnoreWhitespace = true };

    /// <summary>The sheets in their order, with the part that each stands in.</summary>
    /// <exception cref="InvalidDataException">It is no workbook.</exception>
    /// <exception cref="XmlException">Its parts are not well formed.</exception>
    public static IReadOnlyList<(string Name, string Part)> Of(ZipArchive workbook)
    {
        var parts = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var element in Elements(workbook, "xl/_rels/workbook.xml.rels", "Relationship"))
        {
            if (element.GetAttribute("Id") is { } id && element.GetAttribute("Target") is { } target)
            {
                parts[id] = PartOf(target);
            }
        }

        var sheets = new List<(string, string)>();
        foreach (var element in Elements(workbook, "xl/workbook.xml", "sheet"))
        {
            var id = element.GetAttribute("id", Office) ?? element.GetAttribute("id", StrictOffice);
            sheets.Add((element.GetAttribute("name") ?? "", id is not null && parts.TryGetValue(id, out var part) ? part : ""));
        }

        return sheets;
    }

    /// <summary>Which cells of a sheet hold something.</summary>
    public static SheetCells CellsOf(ZipArchive workbook, string part)
    {
        var cells = new SheetCells();
        if (workbook.GetEntry(part) is not { } entry)
        {
            return cells;
        }

        var texts = SharedTexts(workbook);
        using var stream = entry.Open();
        using var reader = XmlReader.Create(stream, Safe);
        var (row, column) = (-1, -1);
        while (reader.Read())
        {
            if (reader.NodeType != XmlNodeType.Element)
            {
                continue;
            }

            switch (reader.LocalName)
            {
                case "row":
                    var before = row;
                    row = int.TryParse(reader.GetAttribute("r"), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number - 1 : row + 1;
                    column = -1;
                    if (row <= before)
                    {
                        // What reads the values counts rows as they come: out of order, a cell would fall into another's place.
                        throw new InvalidDataException("rows out of order");
                    }

                    break;
                case "c":
                    var left = column;
                    column = ColumnOf(reader.GetAttribute("r")) ?? column + 1;
                    if (column <= left)
                    {
                        throw new InvalidDataException("cells out of order");
                    }

                    cells.Add(row, column, Flaw(reader, texts));

                    break;
                default:
                    break;
            }
        }

        return cells;
    }

    /// <summary>What stands in the cell at hand that is no value; null for a value, or for nothing.</summary>
    /// <param name="reader">At the cell.</param>
    /// <param name="texts">How many texts the workbook keeps apart from its cells.</param>
    private static string? Flaw(XmlReader reader, int texts)
    {
        var isError = reader.GetAttribute("t") == "e";
        var isKeptApart = reader.GetAttribute("t") == "s";
        if (reader.IsEmptyElement)
        {
            return isError ? "" : null;
        }

        // A formula may give a text of no letters; a number of no figures is none that somebody worked out.
        var isText = reader.GetAttribute("t") == "str";
        var (hasFormula, hasValue, value) = (false, false, "");
        using var cell = reader.ReadSubtree();
        while (cell.Read())
        {
            if (cell.NodeType == XmlNodeType.Element && cell.Depth == 1)
            {
                hasFormula |= cell.LocalName == "f";
                hasValue |= cell.LocalName is "v" or "is";
            }
            else if (cell.NodeType == XmlNodeType.Text && hasValue && value.Length <= LongestError)
            {
                value += cell.Value;
            }
        }

        return isError || (isKeptApart && value.Length > 0 && !(int.TryParse(value.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var text) && text < texts)) ? value : hasFormula && (!hasValue || (value.Length == 0 && !isText)) ? "" : null;
    }

    /// <summary>How many texts stand in a part of their own, to which cells point. A cell that points beyond them says something, and nobody knows what.</summary>
    private static int SharedTexts(ZipArchive workbook)
    {
        var texts = 0;
        foreach (var element in Elements(workbook, "xl/_rels/workbook.xml.rels", "Relationship"))
        {
            if (element.GetAttribute("Type")?.EndsWith("/sharedStrings", StringComparison.Ordinal) == true && PartOf(element.GetAttribute("Target") ?? "") is var part && workbook.GetEntry(part) is not null)
            {
                texts += Elements(workbook, part, "si").Count();
            }
        }

        return texts;
    }

    private static string PartOf(string target) => target.StartsWith('/') ? target[1..] : $"xl/{target}";

    /// <summary>The column of <c>F14</c>, from 0.</summary>
    private static int? ColumnOf(string? reference)
    {
        var column = 0;
        var letters = 0;
        foreach (var sign in reference ?? "")
        {
            if (!char.IsAsciiLetterUpper(sign) || letters > 3)
            {
                break;
            }

            column = (column * 26) + sign - 'A' + 1;
            letters++;
        }

        return letters == 0 ? null : column - 1;
    }

    private static IEnumerable<XmlReader> Elements(ZipArchive workbook, string part, string name)
    {
        if (workbook.GetEntry(part) is not { } entry)
        {
            throw new InvalidDataException($"no part {part}");
        }

        using var stream = entry.Open();
        using var reader = XmlReader.Create(stream, Safe);
        while (reader.Read())
        {
            if (reader.NodeType == XmlNodeType.Element && reader.LocalName == name)
            {
                yield return reader;
            }
        }
    }
}
