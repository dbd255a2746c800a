using Byrelaw.Language.Canonical;

namespace Byrelaw.Records.Suggesting;

/// <summary>
/// Writes the <c>records</c> block for the files that lie in a folder. A line counts only where one reading is left; where a person must choose, it
/// stands behind <c># ? </c> and says nothing until somebody takes that away. Until then rows are unread or unpromised, and nobody gets through.
/// </summary>
public static class RecordsSuggester
{
    private static readonly string[] NoRecords = [".byre", ".md", ".jsonl", ".html", ".ics", ".pack"];

    /// <summary>Suggests.</summary>
    /// <param name="named">The folder, as the <c>records</c> line names it.</param>
    /// <param name="files">The files in it, by their names there, with their bytes.</param>
    /// <param name="vocabulary">The words.</param>
    /// <param name="today">What day it is.</param>
    /// <param name="said">What a programme says already of the sources: where headings stand and how cells are parted is kept.</param>
    /// <param name="unread">Takes the files that cannot be read, and why.</param>
    /// <returns>The block, with what was seen of the files above it; lines end with LF.</returns>
    public static string Suggest(string named, IEnumerable<(string Name, byte[] Bytes)> files, Vocabulary vocabulary, LocalDate today, IReadOnlyList<RecordSource>? said = null, ICollection<(string File, string Why)>? unread = null)
    {
        var text = new StringBuilder();
        var (readable, messages) = (new List<SuggestedFile>(), new MessageLines());
        foreach (var (name, bytes) in files.Where(file => !NoRecords.Contains(Path.GetExtension(file.Name))).OrderBy(file => file.Name, StringComparer.Ordinal))
        {
            if (Path.GetExtension(name).Equals(".json", StringComparison.OrdinalIgnoreCase))
            {
                text.Append(CultureInfo.InvariantCulture, $"# {name}: {messages.Take(name, bytes)}\n");
                continue;
            }

            foreach (var (file, shown, whyNot) in SuggestedFile.Read(name, bytes, [.. (said ?? []).Where(source => source.File == name)], today))
            {
                text.Append(CultureInfo.InvariantCulture, $"# {(file is null ? $"{shown}: {whyNot}" : file.Shape)}\n");
                readable.AddRange(file is null ? [] : [file]);
                if (file is null && shown == name)
                {
                    unread?.Add((name, whyNot!));
                }
            }
        }

        text.Append(
            """
            # A line that counts has one meaning only. Of each group of lines behind `# ?` take one, by taking `# ? ` away, and delete the
            # others. Until then nothing is known of what they would say.

            """);
        List<SuggestedLine> lines = [.. Lines(readable, vocabulary, today), .. messages.Make()];
        if (!lines.Exists(line => line.Text.StartsWith("from ", StringComparison.Ordinal) && (line.Text.EndsWith("a row for each animal", StringComparison.Ordinal) || line.Text.Contains("as layout", StringComparison.Ordinal))))
        {
            text.Append("# No file here is known to say which animals there are. One must be `a row for each animal`; without it every other row is of an animal that nobody knows.\n");
        }

        text.Append(CultureInfo.InvariantCulture, $"records {NameText.Text(named)}\n");
        text.AppendJoin("", lines.Select(line => $"{line}\n"));

        return text.ToString();
    }

    private static IEnumerable<SuggestedLine> Lines(List<SuggestedFile> files, Vocabulary vocabulary, LocalDate today)
    {
        const int Indent = 2;
        var latest = files.SelectMany(file => file.Columns.Where(column => column.HoldsDates).SelectMany(column => Latest(column, today))).DefaultIfEmpty().Max();
        yield return new SuggestedLine(Indent, $"up to {latest ?? "FILL-IN"}", IsOpen: true, latest is null ? "till which day is all written down?" : "the latest day in the files: is all written down up to it?");
        yield return new SuggestedLine(Indent, $"complete for calving, abortion, mating, transfer, pregnancy test, drying off, bull in, bull out, purchase since {latest?[..4] ?? "2026"}-01-01", IsOpen: true, "promises are for people to make");
        var meanings = new HeadingMeanings(vocabulary);
        var animals = new AnimalColumnFinder(files, meanings);
        foreach (var file in files)
        {
            foreach (var line in new SourceSuggestion(file, animals.In(file), meanings, latest, files).Lines())
            {
                yield return line;
            }
        }
    }

    /// <summary>The latest day of a column that only one order can read, not after today.</summary>
    private static IEnumerable<string> Latest(ColumnProfile column, LocalDate today)
    {
        var fitting = column.NoDates(DateOrder.YearFirst).Count == 0 ? [DateOrder.YearFirst] : ColumnProfile.Orders.Where(order => column.NoDates(order).Count == ColumnProfile.Orders.Min(one => column.NoDates(one).Count)).ToList();
        var now = NodaTime.Text.LocalDatePattern.Iso.Format(today);
        return fitting is not [var only] ? []
            : column.Texts.Keys.Select(new CellDates(only, column.HasShortYears, today).Landed).OfType<string>().Where(day => string.CompareOrdinal(day, now) <= 0);
    }
}
