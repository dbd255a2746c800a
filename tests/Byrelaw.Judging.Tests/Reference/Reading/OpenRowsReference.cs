namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// "A sheet is open from its day on (today, or the day of <c>--known-on</c>, not before it) until every row of it is on record: each kind that the row would write is done, an
/// entry of that animal, kind and day from any source", written from the design and from nothing else. Rows that say <c>not done</c>, and the column <c>sheet row</c>, are not drawn at random.
/// </summary>
public static class OpenRowsReference
{
    /// <summary>"In doubt meanwhile, for her whose row is open: each kind that it would write, as by a row that cannot be read, of some day from the sheet's to today."</summary>
    public static IEnumerable<Unread> Of(PlainFarm farm, IReadOnlyList<RowAsRead> rows, IReadOnlyDictionary<string, int> places, Vocabulary vocabulary, LocalDate? knownOn)
    {
        var sheets = farm.Sheets.Where(sheet => knownOn is not { } known || sheet.Written <= known).ToList();
        var today = (knownOn ?? farm.Today) is { } day ? DayNumber.Of(day) : int.MaxValue;
        var line = 0;
        foreach (var sheet in sheets)
        {
            if (DayNumber.Of(sheet.For) > today)
            {
                continue;
            }

            // "Void before its day: it counts no more."
            var by = sheets.Where(other => other.Replaces == sheet.Number && other.For == sheet.For).ToList();
            if (by.Any(other => other.Written < sheet.For))
            {
                continue;
            }

            foreach (var row in sheet.Rows)
            {
                // "Void on its day or later: rows whose animal is not on the new one stand below that as taken off."
                var isOnTheNewOne = by.Any(other => other.Rows.Contains(row));
                var kind = vocabulary.FindKind(row.Kind)!;
                var isDone = places.ContainsKey(row.Animal)
                    && rows.Any(entry => entry.Whom == Whom.One && entry.Row.Animal == row.Animal && entry.Kind?.Id == kind.Id && entry.Day == DayNumber.Of(sheet.For) && entry.RestCanBeRead);
                if (!isOnTheNewOne && !isDone)
                {
                    yield return new Unread(places.TryGetValue(row.Animal, out var animal) ? animal : null, kind, null, --line)
                    {
                        SheetFrom = DayNumber.Of(sheet.For),
                        SheetTo = today,
                    };
                }
            }
        }
    }
}
