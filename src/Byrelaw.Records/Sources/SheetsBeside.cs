using Byrelaw.Records.Workbooks;

namespace Byrelaw.Records.Sources;

/// <summary>
/// Sheets of workbooks in the folder of the records that nobody reads, though they have the columns of what is read, or may tell of services and calves: <c>2026b</c> beside <c>Diary</c>,
/// or a whole workbook beside the two landed files. What only says again what a sheet that is read says is nothing more.
/// </summary>
internal static class SheetsBeside
{
    // A larger one is no forgotten part of a diary; it is not looked into.
    private const long Largest = 32 << 20;

    /// <summary>Each by its workbook's name and its own.</summary>
    /// <param name="folder">On disk.</param>
    /// <param name="sources">What is read; none for the two landed files.</param>
    /// <param name="vocabulary">The words.</param>
    public static IEnumerable<string> Of(string folder, ImmutableArray<RecordSource> sources, Vocabulary vocabulary)
    {
        var workbooks = Directory.EnumerateFiles(folder).Where(IsWorkbook).Select(path => (Name: Path.GetFileName(path)!, Path: path)).OrderBy(file => file.Name, StringComparer.Ordinal).ToList();
        if (workbooks.Count == 0)
        {
            return [];
        }

        var (read, others) = (new List<SourceTable>(), new List<(string Sheet, SourceTable Table)>());
        foreach (var (name, path) in workbooks.Where(file => RegularFile.Length(file.Path) <= Largest))
        {
            var bytes = RegularFile.Read(path)!;
            var named = sources.Where(source => source.File.Replace('\\', '/') == name).ToList();
            foreach (var sheet in WorkbookTable.Sheets(bytes, WorkbookBounds.Usual))
            {
                var by = named.Find(source => source.Sheet is null || NameFolding.Fold(source.Sheet) == NameFolding.Fold(sheet));
                if (WorkbookTable.Read(name, bytes, new RecordSource(name, SourceRows.Events, default) { Sheet = sheet, HeadingRows = by?.HeadingRows ?? (1, 1) }, WorkbookBounds.Usual, out _) is not { } table)
                {
                    continue;
                }

                if (by is null)
                {
                    others.Add((sheet, table));
                }
                else
                {
                    read.Add(table);
                }
            }
        }

        var known = read.SelectMany(table => table.Rows).Select(row => string.Join('\t', row.Cells)).ToHashSet(StringComparer.Ordinal);
        return [.. others.Where(other => other.Table.Rows.Any(row => !known.Contains(string.Join('\t', row.Cells))) && (HasColumnsOf(other.Table, read, sources.IsEmpty) || FilesBeside.IsCalledSo(other.Sheet, vocabulary) || FilesBeside.TellsOfCalves(Cells(other.Table), vocabulary)))
            .Select(other => other.Table.Shown)];
    }

    private static bool IsWorkbook(string path) => path.EndsWith(".xlsx", StringComparison.OrdinalIgnoreCase) && !Path.GetFileName(path).StartsWith("~$", StringComparison.Ordinal);

    private static bool HasColumnsOf(SourceTable other, List<SourceTable> read, bool areLanded) =>
        read.Exists(table => table.Headings.Count > 1 && table.Headings.Where(heading => heading.Length > 0).All(heading => other.Headings.Contains(heading, StringComparer.OrdinalIgnoreCase)))
        || (areLanded && new HashSet<string>(["date", "animal", "kind"], StringComparer.OrdinalIgnoreCase).IsSubsetOf(other.Headings));

    private static string[][] Cells(SourceTable table) => [[.. table.Headings], .. table.Rows.Select(row => row.Cells.ToArray())];
}
