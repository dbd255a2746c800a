using Byrelaw.Language.Floors;

namespace Byrelaw.Records.Sources;

/// <summary>
/// Columns that nobody reads and whose cells tell of calves, in whatever language their headings are: results such as <c>PD+</c>, and days to come, as the day on which she is due.
/// </summary>
internal static class ColumnsThatTell
{
    // Beyond so many texts it is a column of remarks or of numbers.
    private const int MostTexts = 5_000;

    // A slip here and there is no day to come.
    private const int FewestToCome = 10;

    /// <summary>Their headings.</summary>
    /// <param name="source">What the farm says of the source.</param>
    /// <param name="table">What stands in it.</param>
    /// <param name="headings">The columns that no line reads.</param>
    /// <param name="upTo">The day that the records reach; null where nobody says.</param>
    public static IEnumerable<string> Of(RecordSource source, SourceTable table, IEnumerable<string> headings, LocalDate? upTo)
    {
        var dates = new CellDates(source.Dates, source.HasShortYears, null);
        foreach (var heading in headings)
        {
            if (table.Find(heading) is >= 0 and var column && Texts(table, column) is { Count: > 0 } texts && (FloorHeadings.TellOfCalves(texts) || AreToCome(texts, dates, source.AsAt ?? source.UpTo ?? upTo)))
            {
                yield return heading;
            }
        }
    }

    private static Dictionary<string, int>? Texts(SourceTable table, int column)
    {
        var texts = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var row in table.Rows)
        {
            if (row.Flaw is not null || row[column] is not { Length: > 0 } cell)
            {
                continue;
            }

            texts[cell] = texts.GetValueOrDefault(cell) + 1;
            if (texts.Count > MostTexts)
            {
                return null;
            }
        }

        return texts;
    }

    private static bool AreToCome(Dictionary<string, int> texts, CellDates dates, LocalDate? upTo)
    {
        if (upTo is not { } day)
        {
            return false;
        }

        var (last, toCome, all) = (NodaTime.Text.LocalDatePattern.Iso.Format(day), 0, 0);
        foreach (var (cell, count) in texts)
        {
            all += count;
            toCome += dates.Landed(cell) is { } landed && string.CompareOrdinal(landed, last) > 0 ? count : 0;
        }

        return toCome * FewestToCome >= all && toCome > 0;
    }
}
