using Byrelaw.Language.Floors;
using Byrelaw.Records.Embryos;

namespace Byrelaw.Records.Sources;

/// <summary>
/// Files that lie in the folder of the records and that nobody reads, though they have the columns of one that is read and rows that it has not, <c>Events-2026.csv</c> beside
/// <c>events.csv</c>, or may tell of services and calves. What is only an older copy says nothing more.
/// </summary>
internal static class FilesBeside
{
    private const int FirstRows = 6;
    private const int LongestHeading = 40;
    private const int MostTexts = 5_000;
    private static readonly string[] TextEndings = [".csv", ".txt", ".tsv", ".bak", ".old", ".orig", ".copy", ".tmp", "~"];
    private static readonly char[] Separators = [',', ';', '\t', '|'];

    // A larger file is no forgotten part of a diary; it is not looked into.
    private const long Largest = 64 << 20;

    /// <summary>Their names, as shown.</summary>
    /// <param name="folder">On disk.</param>
    /// <param name="shownFolder">As messages name it.</param>
    /// <param name="sources">What is read; none for the two landed files.</param>
    /// <param name="vocabulary">The words.</param>
    public static ImmutableArray<string> Of(string folder, string shownFolder, ImmutableArray<RecordSource> sources, Vocabulary vocabulary)
    {
        string[] read = sources.IsEmpty ? [HerdReader.AnimalsFile, HerdReader.EventsFile] : [.. sources.Select(source => source.File.Replace('\\', '/'))];
        string[] others = [.. Directory.EnumerateFiles(folder).Select(path => Path.GetFileName(path)!).Where(name => !read.Contains(name, StringComparer.Ordinal) && name is not (EmbryoBook.EmbryosFile or EmbryoBook.PedigreeFile) && IsText(name)).Order(StringComparer.Ordinal)];
        string[] sheets = [.. SheetsBeside.Of(folder, sources, vocabulary).Select(sheet => InFolder(shownFolder, sheet))];
        if (others.Length == 0)
        {
            return [.. sheets];
        }

        HashSet<string>[] known = [.. read.Where(IsText).Select(name => Lines(folder, name)).OfType<List<string>>().Where(lines => lines.Count > 0).Select(lines => lines.ToHashSet(StringComparer.Ordinal))];
        string[] headings = [.. read.Where(IsText).Select(name => Lines(folder, name)).OfType<List<string>>().Select(lines => lines.FirstOrDefault("")).Where(line => line.Length > 0)];
        return
        [
            .. others.Where(name => Lines(folder, name) is { Count: > 1 } lines
                && lines.Skip(1).Any(line => line.Length > 0 && !Array.Exists(known, all => all.Contains(line)))
                && (Array.FindIndex(headings, heading => HasAll(lines[0], heading)) >= 0 || IsCalledSo(Path.GetFileNameWithoutExtension(name), vocabulary) || TellsOfCalves(Split(lines), vocabulary)))
                .Select(name => InFolder(shownFolder, name)),
            .. sheets,
        ];
    }

    /// <summary>Whether the name of a file or a sheet speaks of a service or a calf: <c>services.csv</c>.</summary>
    internal static bool IsCalledSo(string name, Vocabulary vocabulary) => FloorHeadings.MayBe(name.Replace('_', ' '), vocabulary) is not null;

    private static string InFolder(string shownFolder, string name) => shownFolder.Length == 0 ? name : $"{shownFolder.TrimEnd('/')}/{name}";

    /// <summary>What an editor or a person calls a copy is text as the file itself is.</summary>
    private static bool IsText(string name) => name.Replace(".gz", "", StringComparison.OrdinalIgnoreCase) is var plain && Array.Exists(TextEndings, ending => plain.EndsWith(ending, StringComparison.OrdinalIgnoreCase));

    private static List<string>? Lines(string folder, string name)
    {
        var path = Path.Combine(folder, name.Replace('/', Path.DirectorySeparatorChar));
        return RegularFile.Exists(path) && RegularFile.Length(path) <= Largest && RegularFile.Read(path) is { } bytes && SourceText.Of(bytes, null, Largest, out _) is { } text
            ? [.. text.Split('\n').Select(line => line.TrimEnd('\r'))] : null;
    }

    /// <summary>Whether a heading has the columns of another that nobody can do without, in whatever order and case: the day, animal and kind of what happened, else all of them.</summary>
    private static bool HasAll(string heading, string other)
    {
        var cells = Cells(heading).ToHashSet(StringComparer.Ordinal);
        string[] others = [.. Cells(other)];
        return others.Length > 1 && others.Contains("date") && others.Contains("kind") && others.Contains("animal") ? cells.Contains("date") && cells.Contains("kind") && cells.Contains("animal")
            : others.Length > 1 && Array.TrueForAll(others, cells.Contains);
    }

    /// <summary>Whether a heading in its first rows, or the cells of a column, speak of a service or a calf.</summary>
    internal static bool TellsOfCalves(string[][] rows, Vocabulary vocabulary)
    {
        if (rows.Take(FirstRows).Any(row => Array.Exists(row, cell => cell.Length is > 0 and < LongestHeading && FloorHeadings.MayBe(cell, vocabulary) is not null)))
        {
            return true;
        }

        for (var column = 0; column < rows.Max(row => row.Length); column++)
        {
            var texts = rows.Where(row => row.Length > column && row[column].Length > 0).GroupBy(row => row[column], StringComparer.Ordinal).Take(MostTexts).ToDictionary(same => same.Key, same => same.Count(), StringComparer.Ordinal);
            if (texts.Count > 0 && FloorHeadings.TellOfCalves(texts))
            {
                return true;
            }
        }

        return false;
    }

    private static string[][] Split(List<string> lines)
    {
        var separator = Separators.MaxBy(sign => lines.Take(FirstRows).Sum(line => line.Count(one => one == sign)));
        return [.. lines.Select(line => Array.ConvertAll(line.Split(separator), cell => cell.Trim('"', ' ')))];
    }

    private static IEnumerable<string> Cells(string heading) => heading.Split(',', ';', '\t', '|').Select(cell => ColumnMap.Fold(cell.Trim('"')).Trim()).Where(cell => cell.Length > 0);
}
