namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// "A sheet is open from its day on (today, or the day of <c>--known-on</c>, not before it) until every row of it is on record: each kind that the row would write is done, an
/// entry with its <c>sheet row</c> or one of that animal, kind and day from any source; or not done", written from the design and from nothing else.
/// </summary>
public static class OpenRowsReference
{
    /// <summary>"In doubt meanwhile, for her whose row is open: each kind that it would write, as by a row that cannot be read, of some day from the sheet's, or the one on which it was written where that is earlier, to today."</summary>
    public static IEnumerable<Unread> Of(PlainFarm farm, IReadOnlyList<RowAsRead> rows, IReadOnlyList<EventRow> seen, IReadOnlyDictionary<string, int> places, Vocabulary vocabulary, LocalDate? knownOn)
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

            foreach (var (row, number) in sheet.Rows.Select((row, place) => (row, place + 1)))
            {
                var named = $"{sheet.Number}:{number}";
                // "Void on its day or later: rows whose animal is not on the new one stand below that as taken off."
                var isOnTheNewOne = by.Any(other => other.Rows.Contains(row));
                var kind = vocabulary.FindKind(row.Kind)!;
                var isDone = places.ContainsKey(row.Animal)
                    && rows.Any(entry => entry.Whom == Whom.One && entry.Row.Animal == row.Animal && entry.Kind?.Id == kind.Id && entry.RestCanBeRead
                        && (entry.Row.SheetRow == named || entry.Day == DayNumber.Of(sheet.For)));
                isDone |= seen.Any(said => said.SheetRow == named && said.Kind == "not done" && said.Animal == row.Animal && NameFolding.Fold(said.Value) == NameFolding.Fold(row.Kind));
                if (!isOnTheNewOne && !isDone)
                {
                    yield return new Unread(places.TryGetValue(row.Animal, out var animal) ? animal : null, kind, null, --line)
                    {
                        SheetFrom = Math.Min(DayNumber.Of(sheet.For), DayNumber.Of(sheet.Written)),
                        SheetTo = today,
                    };
                }
            }
        }
    }

    /// <summary>"A row of the program's own kind <c>not done</c> (<c>value</c> the kind, the reason in <c>note</c>, <c>sheet row</c>), which no condition may name": it says nothing else.</summary>
    public static bool SaysNotDone(RowAsRead row, Vocabulary vocabulary) =>
        row is { Whom: Whom.One, Day: not null, Row.Kind: "not done", EntryCanBeRead: true } && row.Row.SheetRow.Length > 0 && vocabulary.FindKind(row.Row.Value) is not null;
}
