namespace Byrelaw.Records.Ledger;

/// <summary>One entry that a sheet's row would write, and of which nobody has said whether it was done.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="Row">Its row.</param>
/// <param name="Entry">The entry.</param>
/// <param name="Animal">Her place in the herd; -1 where she may be anyone.</param>
/// <param name="Kind">The kind's id; -1 where nobody declares it: then it may be any.</param>
public sealed record OpenRow(Sheet Sheet, SheetRow Row, SheetEntry Entry, int Animal, int Kind)
{
    /// <summary>The day that it is for.</summary>
    public LocalDate For => Row.For ?? Sheet.For;

    /// <summary>The day from which on it may have been done: a sheet may be used before its day, once it is written.</summary>
    public LocalDate From => LocalDate.Min(For, Sheet.Written);
}

/// <summary>
/// The rows of sheets that are open on a day. Each kind that one would write is in doubt, as by a row that cannot be read, of some day from the sheet's, or from the earlier one on which it was written, to today. A row is
/// closed by an entry that names it, by one of that animal, kind and day from any source, or by a row that says that it was not done; one of somebody's own file also by a later line of the ledger that withdraws it.
/// </summary>
internal sealed class OpenRows
{
    private readonly EventStage[] _stages;
    private readonly Vocabulary _vocabulary;
    private readonly ImmutableArray<Sheet> _sheets;
    private readonly HashSet<(string Row, int Kind, int Animal)> _closed;
    private readonly HashSet<(string Sheet, int Row, SheetEntry Entry)> _withdrawn;

    private OpenRows(ImmutableArray<Sheet> sheets, EventStage[] stages, Vocabulary vocabulary)
    {
        (_sheets, _stages, _vocabulary) = (sheets, stages, vocabulary);
        _closed = [.. stages.SelectMany(stage => stage.SheetRows).Select(row => (row.SheetRow.Trim(), row.Kind, row.Animal))];
        _withdrawn = [.. from word in sheets where word.IsWithdrawal from number in word.Replaces from row in word.Rows from entry in row.Writes select (number, row.Row, entry)];
    }

    /// <summary>All that are open.</summary>
    /// <param name="sheets">The sheets that are known of.</param>
    /// <param name="today">The day whose knowledge is asked for.</param>
    /// <param name="placeOf">An animal's place by her number; less than 0 for nobody's.</param>
    /// <param name="stages">Rows that could be read, not sorted yet.</param>
    /// <param name="vocabulary">The words.</param>
    public static ImmutableArray<OpenRow> Of(ImmutableArray<Sheet> sheets, int today, Func<string, int> placeOf, EventStage[] stages, Vocabulary vocabulary)
    {
        var open = new OpenRows(sheets, stages, vocabulary);
        return
        [
            .. from sheet in sheets
               where !sheet.IsWithdrawal && !open.IsVoidBeforeItsDay(sheet)
               from row in sheet.Rows
               where Day.Number(row.For ?? sheet.For) <= today
               let animal = row.Animal is { } number ? placeOf(number) : -1
               from entry in row.Writes
               let kind = vocabulary.FindKind(entry.Kind)?.Declaration.Id ?? -1
               where !open._withdrawn.Contains((sheet.Number, row.Row, entry)) && !open.IsTakenOver(sheet, row, entry) && !open.IsClosed(sheet, row, entry, animal, kind)
               select new OpenRow(sheet, row, entry, Math.Max(-1, animal), kind),
        ];
    }

    /// <summary>What they put in doubt; each is named by its place among them, counted down from -1.</summary>
    public static IEnumerable<Gap> Gaps(ImmutableArray<OpenRow> open, int today) =>
        open.Select((row, place) => new Gap(row.Animal, row.Kind, Day.Number(row.From), Math.Max(today, Day.Number(row.For)), -1 - place) { IsOfSheet = true });

    private bool IsVoidBeforeItsDay(Sheet sheet) => _sheets.Any(other => other.Written < sheet.For && Replaces(other, sheet));

    /// <summary>Void on its day or later: what the new one would write of her is held against that one, and everything else stays open here. A row of somebody's own file whose animal could not be
    /// read is the one of that place in the file that was mended.</summary>
    private bool IsTakenOver(Sheet sheet, SheetRow row, SheetEntry entry) => _sheets.Any(other => Replaces(other, sheet)
        && other.Rows.Any(one => one.Animal is not null && (row.Animal is null ? one.Row == row.Row : one.Animal == row.Animal && one.Embryo == row.Embryo && one.Writes.Contains(entry))));

    private static bool Replaces(Sheet other, Sheet sheet) => other.For == sheet.For && other.Work == sheet.Work && other.Replaces.Contains(sheet.Number);

    private bool IsClosed(Sheet sheet, SheetRow row, SheetEntry entry, int animal, int kind)
    {
        var named = $"{sheet.Number}:{row.Row}";
        if (row.Animal is null || kind < 0)
        {
            // What could not be read was mended by hand: as many kinds name the row as it would write, of her whose row it is where that could be read.
            return _closed.Where(one => one.Row == named && (row.Animal is null || one.Animal == animal) && (kind < 0 || one.Kind == kind)).Select(one => one.Kind).Distinct().Count() >= (kind < 0 ? row.Writes.Length : 1);
        }

        // A row of somebody else closes nothing of hers.
        return animal >= 0 && (_closed.Contains((named, kind, animal)) || _stages.Any(stage => IsOnRecord(stage, animal, kind, Day.Number(row.For ?? sheet.For), entry.Device)));
    }

    private bool IsOnRecord(EventStage stage, int animal, int kind, int day, string? device) =>
        Lines(stage.Events[kind], animal, day).Concat(Lines(stage.Tests[kind], animal, day)).Concat(Lines(stage.Measures[kind], animal, day)).Any(line => device is null || IsOfDevice(stage, kind, line, device));

    private static IEnumerable<int> Lines<TResult>(ChunkedList<Staged<TResult>> rows, int animal, int day)
        where TResult : struct => rows.All().Where(row => row.Animal == animal && row.Day == day).Select(row => row.Line);

    /// <summary>An entry of a device says what became of it; one that was to come out may have been gone.</summary>
    private bool IsOfDevice(EventStage stage, int kind, int line, string device)
    {
        var place = _vocabulary.ById[kind].Details.ToList().FindIndex(detail => NameFolding.Fold(detail.Name) == "device");
        return place >= 0 && stage.Details.All().Any(cell => cell.Line == line && cell.Detail == place && cell is { State: FactState.Known, Text: { } said }
            && (NameFolding.Fold(said) == device || (device == "out" && NameFolding.Fold(said) == "gone")));
    }
}
