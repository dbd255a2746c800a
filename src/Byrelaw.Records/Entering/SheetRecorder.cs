using System.Security.Cryptography;

namespace Byrelaw.Records.Entering;

/// <summary>
/// Turns what was ticked into rows of <c>events.csv</c>: all of a sheet or nothing, each row once. The rows are read as the records would read them, against the herd as it would
/// be afterwards; nothing is written here.
/// </summary>
public sealed class SheetRecorder
{
    private readonly RecordsAddedTo _records;
    private readonly SheetLedger _ledger;
    private readonly EventsToAddTo? _events;
    private readonly List<Diagnostic> _problems = [];

    private SheetRecorder(RecordsAddedTo records)
    {
        _records = records;
        _ledger = records.Ledger ?? SheetLedger.Of([]);
        _events = EventsToAddTo.Of(records.Events, records.ShownEvents, out var problem);
        _problems.AddRange(problem is null ? [] : [problem]);
    }

    /// <summary>Records a sheet that was filled in.</summary>
    /// <param name="records">Where it is to be written.</param>
    /// <param name="filled">The sheet.</param>
    public static SheetOutcome Of(RecordsAddedTo records, FilledSheet filled)
    {
        ArgumentNullException.ThrowIfNull(records);
        ArgumentNullException.ThrowIfNull(filled);
        var recorder = new SheetRecorder(records);
        var number = filled.Number ?? recorder.OwnNumber(filled);
        var sheet = recorder._ledger.Sheets.FirstOrDefault(one => one.Number == number);
        if (sheet is null && filled.Number is not null)
        {
            var row = filled.Table.Rows.First(one => FilledSheet.Cell(one, filled.Table.Find("sheet")).Length > 0);
            recorder._problems.Add(SheetProblems.NoSuchSheet(filled.Table, row, number, NearestName.To(number, recorder._ledger.Sheets.Select(one => one.Number))));
            return recorder.Refused(number, null, null);
        }

        // A file of somebody's own is read by its own rows also where it was refused before: then each of them has its row there.
        var isOwn = filled.Number is null;
        var reading = SheetReading.Of(filled, number, isOwn ? null : sheet, records.Vocabulary, records.Today);
        recorder._problems.AddRange(reading.Problems);
        if (isOwn)
        {
            sheet = new Sheet(number, reading.Rows.Select(row => row.For).Where(day => day is not null).DefaultIfEmpty(records.Today).Min()!.Value, records.Today, null, "V", [], recorder.OfAnimals(reading.Rows));
            sheet = sheet with { Replaces = recorder.Mended(sheet) };
        }

        var outcome = recorder.Record(sheet!, isOwn, reading.Entries, filled) with { Unanswered = [.. reading.Unanswered] };
        return outcome.IsRefused || isOwn || !sheet!.IsOwn ? outcome : outcome with { Ledger = recorder.Withdrawn(outcome.Ledger, sheet, ColumnsTakenOut.Of(filled, sheet, records.Vocabulary), "the column was taken out") };
    }

    /// <summary>Says of every row of a sheet that is still open that it was not done.</summary>
    /// <param name="records">Where it is to be written.</param>
    /// <param name="number">The sheet.</param>
    /// <param name="open">Its open rows.</param>
    /// <param name="reason">Why it was not done.</param>
    public static SheetOutcome NotDone(RecordsAddedTo records, string number, IEnumerable<OpenRow> open, string reason)
    {
        ArgumentNullException.ThrowIfNull(records);
        var recorder = new SheetRecorder(records);
        var sheet = recorder._ledger.Sheets.First(one => one.Number == number);
        if (sheet.IsOwn)
        {
            // Taken by mistake, whatever stands in it: no row of the book can speak for columns and animals that nobody knows.
            return recorder.Record(sheet, isOwn: false, [], filled: null) with { Ledger = recorder.Withdrawn(recorder._ledger, sheet, sheet.Rows, reason), IsWithdrawn = true };
        }

        RecordedEntry[] entries = [.. open.Where(row => row is { Animal: >= 0, Kind: >= 0 } && row.Row.Animal is not null).Select(row => new RecordedEntry(
            LocalDate.Min(row.For, records.Today), row.Row.Animal!, records.Vocabulary.ById[row.Kind], row.Row.Row, 0) { IsNotDone = true, Note = reason })];
        return recorder.Record(sheet, isOwn: false, entries, filled: null);
    }

    /// <summary>The ledger with a person's word that what these rows would write was never to be written; the same where they would write nothing.</summary>
    private SheetLedger Withdrawn(SheetLedger ledger, Sheet sheet, IEnumerable<SheetRow> rows, string why)
    {
        var withdrawn = rows.Where(row => !row.Writes.IsEmpty).ToImmutableArray();
        var number = string.Create(CultureInfo.InvariantCulture, $"W{sheet.Number[1..]}-{ledger.Sheets.Length + 1}");
        return withdrawn.IsEmpty ? ledger : ledger.With(new Sheet(number, _records.Today, _records.Today, null, "W", [sheet.Number], withdrawn) { Why = why });
    }

    /// <summary>A number that is no animal's may be anyone's.</summary>
    private ImmutableArray<SheetRow> OfAnimals(IEnumerable<SheetRow> rows)
    {
        var herd = HerdReading.Read(
            RecordInput.In(_records.Folder, _records.ShownFolder, _records.Vocabulary, _records.Keeping, _records.Herd), _records.Vocabulary, _records.Keeping, null, ReadingOptions.Default).Herd;
        return [.. rows.Select(row => row.Animal is { } number && herd.Find(number) < 0 ? row with { Animal = null } : row)];
    }

    /// <summary>Earlier forms of the same file, in which an animal could not be read: as many rows, of the same day, and each of the same animal and kinds where it could be.</summary>
    private ImmutableArray<string> Mended(Sheet sheet) =>
    [
        .. _ledger.Sheets.Where(other => other.Work == sheet.Work && other.For == sheet.For && other.Number != sheet.Number && other.Rows.Length == sheet.Rows.Length
            && other.Rows.Zip(sheet.Rows).All(pair => (pair.First.Animal is null || pair.First.Animal == pair.Second.Animal) && pair.First.Writes.Length == pair.Second.Writes.Length)).Select(other => other.Number),
    ];

    private SheetOutcome Record(Sheet sheet, bool isOwn, IReadOnlyList<RecordedEntry> entries, FilledSheet? filled)
    {
        var (fresh, there) = (new List<RecordedEntry>(), 0);
        foreach (var entry in _events is null ? [] : entries)
        {
            var line = _events!.Find(entry, sheet.Number, _records.Vocabulary, out var otherwise);
            if (line == 0)
            {
                fresh.Add(entry);
            }
            else if (otherwise is var (was, now) && filled is not null)
            {
                _problems.Add(SheetProblems.OnRecordOtherwise(filled.Table, filled.Table.Row(entry.Line), _records.ShownEvents, line, was, now));
            }
            else
            {
                there++;
            }
        }

        if (_problems.Count > 0)
        {
            return Refused(sheet.Number, sheet, isOwn ? filled : null);
        }

        var ledger = isOwn ? _ledger.With(sheet) : _ledger;
        var outcome = new SheetOutcome(sheet, [.. fresh], there, _events!.Filled, [], ledger, Written) { IsOwn = isOwn };
        var herd = outcome.Herd(_records);
        if (filled is not null)
        {
            _problems.AddRange(StrawsRead.Problems(filled.Table, sheet, fresh, herd.Embryos));
        }

        foreach (var problem in herd.RowProblems.Where(row => !row.IsOfAnimals && row.Problem.File == _records.ShownEvents && row.Problem.Line > _events.Lines && filled is not null))
        {
            var row = filled!.Table.Row(fresh[Math.Min(fresh.Count - 1, problem.Problem.Line - _events.Lines - 1)].Line);
            _problems.Add(problem.Problem with { File = filled.Table.Shown, Line = row.Number, Column = 1, Length = Math.Max(1, row.Text.Length), LineText = Unreadable.Unmarked(row.Text) });
        }

        return _problems.Exists(problem => problem.Severity == Severity.Error) ? Refused(sheet.Number, sheet, isOwn ? filled : null) : outcome with { Problems = [.. _problems] };

        byte[] Written(IReadOnlyList<RecordedEntry> all) => _events!.With(all, sheet.Number, _records.Recorded);
    }

    /// <summary>Nothing is written of it; somebody's own file becomes known all the same, each row open from its own day.</summary>
    private SheetOutcome Refused(string number, Sheet? sheet, FilledSheet? own) => new(
        sheet ?? new Sheet(number, _records.Today, _records.Today, null, "?", [], []), [], 0, 0, [.. _problems], own is not null && sheet is not null ? _ledger.With(sheet) : _ledger, _ => _records.Events ?? [])
    {
        IsOwn = own is not null,
        ToMend = own is null ? null : ToMendOf(own, number),
    };

    /// <summary>V, its first date, and the start of the SHA-256 of its bytes.</summary>
    private string OwnNumber(FilledSheet filled)
    {
        var first = filled.Table.Rows.Select(row => FilledSheet.Cell(row, filled.Table.Find("date"))).Select(cell => NodaTime.Text.LocalDatePattern.Iso.Parse(cell)).Where(day => day.Success).Select(day => day.Value).DefaultIfEmpty(_records.Today).Min();
        var hash = Convert.ToHexStringLower(SHA256.HashData(filled.Bytes.Span));
        string With(int digits) => string.Create(CultureInfo.InvariantCulture, $"V{first.Month:00}{first.Day:00}-{hash[..digits]}");

        // One that was withdrawn is used up: taken again it is known of anew.
        var digits = 6;
        while (digits < hash.Length && _ledger.Sheets.Any(sheet => sheet.IsWithdrawal && sheet.Replaces.Contains(With(digits))))
        {
            digits++;
        }

        return With(digits);
    }

    /// <summary>The file with its number and its rows' numbers filled in, to be mended and recorded.</summary>
    private static byte[] ToMendOf(FilledSheet filled, string number)
    {
        var rows = new LandedRows(["sheet", "row", .. filled.Table.Headings.Where(heading => NameFolding.Fold(heading) is not ("sheet" or "row"))]);
        int[] columns = [.. Enumerable.Range(0, filled.Table.Headings.Count).Where(column => NameFolding.Fold(filled.Table.Headings[column]) is not ("sheet" or "row"))];
        for (var at = 0; at < filled.Table.Rows.Count; at++)
        {
            rows.Add(default, [number, $"{at + 1}", .. columns.Select(column => Unreadable.Unmarked(filled.Table.Rows[at][column]))]);
        }

        return rows.ToBytes();
    }
}
