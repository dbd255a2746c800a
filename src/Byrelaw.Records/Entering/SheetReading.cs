namespace Byrelaw.Records.Entering;

/// <summary>
/// What the rows of a sheet say. Blank is open: not ticked never becomes "did not happen". A tick is never a test, and <c>no</c> wants a reason.
/// </summary>
internal sealed class SheetReading
{
    private static readonly HashSet<string> Yes = new(["yes", "y", "✓", "☑", "true", "done"], StringComparer.Ordinal);
    private static readonly HashSet<string> No = new(["no", "n", "false"], StringComparer.Ordinal);

    private readonly SourceTable _table;
    private readonly Sheet? _sheet;
    private readonly LocalDate _today;
    private readonly Kind? _pregnancyTest;
    private readonly HashSet<int> _seen = [];

    private SheetReading(FilledSheet filled, string number, Sheet? sheet, Vocabulary vocabulary, LocalDate today)
    {
        (_table, Number, _sheet, _today) = (filled.Table, number, sheet, today);
        _pregnancyTest = vocabulary.FindKind("pregnancy test");
        Columns = SheetColumns.Of(_table, vocabulary, Problems);
    }

    /// <summary>The sheet's number.</summary>
    public string Number { get; }

    /// <summary>The columns.</summary>
    public SheetColumns Columns { get; }

    /// <summary>What was done, and what was not.</summary>
    public List<RecordedEntry> Entries { get; } = [];

    /// <summary>What is wrong: any of it, and nothing is written.</summary>
    public List<Diagnostic> Problems { get; } = [];

    /// <summary>Rows whose box is ticked though no answer stands there: they stay open.</summary>
    public List<(int Row, Kind Kind)> Unanswered { get; } = [];

    /// <summary>Of somebody's own file: its rows, as far as they can be read.</summary>
    public List<SheetRow> Rows { get; } = [];

    /// <summary>Reads one.</summary>
    /// <param name="filled">The file.</param>
    /// <param name="number">Its number.</param>
    /// <param name="sheet">As the ledger has it; null for somebody's own file that is read for the first time.</param>
    /// <param name="vocabulary">The words.</param>
    /// <param name="today">What day it is.</param>
    public static SheetReading Of(FilledSheet filled, string number, Sheet? sheet, Vocabulary vocabulary, LocalDate today)
    {
        var reading = new SheetReading(filled, number, sheet, vocabulary, today);
        for (var at = 0; at < filled.Table.Rows.Count; at++)
        {
            reading.Read(filled.Table.Rows[at], at + 1);
        }

        return reading;
    }

    private void Read(SourceRow row, int place)
    {
        if (row.Flaw is { } flaw)
        {
            Problems.Add(SheetProblems.FallsApart(_table, row, flaw));
            Rows.Add(new SheetRow(place, null, null, [.. Columns.Kinds.Select(kind => new SheetEntry(kind.Kind.Name)), .. Columns.Unknown.Select(column => new SheetEntry(column.Heading))]));
            return;
        }

        var known = _sheet is null ? null : OnTheSheet(row);
        if (_sheet is not null && known is null)
        {
            return;
        }

        var number = known?.Row ?? place;
        var animal = Animal(row, known);
        var date = Date(row, known);
        if (_sheet is null)
        {
            Rows.Add(new SheetRow(number, animal, null, [.. Written(row)]) { For = date });
        }

        if (IsSomebodysOwn && Columns.Unknown.Count == 0)
        {
            RefuseWhatSaysNotWhether(row);
        }

        if (animal is null || date is not { } day)
        {
            return;
        }

        foreach (var column in Columns.Kinds)
        {
            Read(row, number, animal, day, column.Kind, column.Column, column.Details, known?.Writes.FirstOrDefault(entry => entry.Kind == column.Kind.Name));
        }
    }

    private bool IsSomebodysOwn => _sheet is null or { Work: "V" };

    /// <summary>Of somebody's own file: an embryo's label, and nothing that says whether she got it, is no row that may close.
    /// Below a heading that nobody knows it may well be said; that is refused by itself.</summary>
    private void RefuseWhatSaysNotWhether(SourceRow row)
    {
        foreach (var (kind, _, details) in Columns.Kinds.Where(kind => IsBlank(row, kind.Column)))
        {
            if (details.FindIndex(detail => !IsBlank(row, detail.Column)) is >= 0 and var at)
            {
                Problems.Add(SheetProblems.DetailOfNothing(_table, row, FilledSheet.Cell(row, details[at].Column), kind.Name, details[at].Detail.Name));
            }
        }

        if (Columns[row, "done"].Length > 0 && Columns.Kinds.All(kind => IsBlank(row, kind.Column)))
        {
            Problems.Add(SheetProblems.DoneOfNothing(_table, row, Columns[row, "done"]));
        }
    }

    private static bool IsBlank(SourceRow row, int column) => FilledSheet.Cell(row, column).Length == 0;

    /// <summary>The row of the ledger that a row of the file is of.</summary>
    private SheetRow? OnTheSheet(SourceRow row)
    {
        var (sheet, cell) = (Columns[row, "sheet"], Columns[row, "row"]);
        if (sheet != Number)
        {
            Problems.Add(SheetProblems.OfAnotherSheet(_table, row, sheet, Number));
            return null;
        }

        if (!int.TryParse(cell, NumberStyles.None, CultureInfo.InvariantCulture, out var number) || _sheet!.Rows.FirstOrDefault(one => one.Row == number) is not { } known || !_seen.Add(number))
        {
            Problems.Add(SheetProblems.NotOnTheSheet(_table, row, cell, Number));
            return null;
        }

        return known;
    }

    private string? Animal(SourceRow row, SheetRow? known)
    {
        var animal = Columns[row, "animal"];
        if (animal.Length > 0 && !Unreadable.Is(animal) && (known?.Animal is null || known.Animal == animal))
        {
            return animal;
        }

        Problems.Add(SheetProblems.OtherAnimal(_table, row, Unreadable.Unmarked(animal), Number, known?.Row ?? row.Number, known?.Animal ?? "an animal of the records"));
        return null;
    }

    /// <summary>The day. A spreadsheet may have turned the sheet's own day round; any other day is written as the records write it.</summary>
    private LocalDate? Date(SourceRow row, SheetRow? known)
    {
        var cell = Columns[row, "date"];
        var own = known?.For ?? _sheet?.For;
        if (cell.Length == 0 && own is not null)
        {
            return own;
        }

        string?[] readings = [new CellDates(DateOrder.YearFirst, false, null).Landed(cell), new CellDates(DateOrder.DayFirst, true, _today).Landed(cell), new CellDates(DateOrder.MonthFirst, true, _today).Landed(cell)];
        LocalDate?[] days = [.. readings.Select(reading => reading is not null && NodaTime.Text.LocalDatePattern.Iso.Parse(reading) is { Success: true } day ? day.Value : (LocalDate?)null)];
        if ((days[0] ?? days.FirstOrDefault(day => day is not null && day == own)) is not { } said)
        {
            Problems.Add(SheetProblems.NotADate(_table, row, Unreadable.Unmarked(cell)));
            return null;
        }

        if (said > _today)
        {
            Problems.Add(SheetProblems.AfterToday(_table, row, cell));
            return null;
        }

        if (!IsSomebodysOwn && said < LocalDate.Min(_sheet!.Written, own!.Value))
        {
            Problems.Add(SheetProblems.BeforeTheSheet(_table, row, cell, Number, _sheet.Written));
            return null;
        }

        return said;
    }

    /// <summary>What a row of somebody's own file would write, whether it can be read or not.</summary>
    private IEnumerable<SheetEntry> Written(SourceRow row) =>
    [
        .. Columns.Kinds.Where(kind => IsMeant(row, kind.Column, kind.Details)).Select(kind => new SheetEntry(kind.Kind.Name, Device(row, kind.Details))),
        .. Columns.Unknown.Where(column => FilledSheet.Cell(row, column.Column).Length > 0).Select(column => new SheetEntry(column.Heading)),
    ];

    private bool IsMeant(SourceRow row, int column, List<(EntryDetail Detail, int Column)> details) =>
        IsBlank(row, column) ? Columns.Unknown.Count == 0 && (details.Exists(detail => !IsBlank(row, detail.Column)) || Columns[row, "done"].Length > 0) : !No.Contains(NameFolding.Fold(FilledSheet.Cell(row, column)));

    private static string? Device(SourceRow row, List<(EntryDetail Detail, int Column)> details) =>
        details.Where(detail => NameFolding.Fold(detail.Detail.Name) == "device").Select(detail => NameFolding.Fold(FilledSheet.Cell(row, detail.Column))).FirstOrDefault(said => said is "in" or "out");

    private void Read(SourceRow row, int number, string animal, LocalDate date, Kind kind, int column, List<(EntryDetail Detail, int Column)> details, SheetEntry? writes)
    {
        var (cell, done) = (FilledSheet.Cell(row, column), writes is null ? "" : Columns[row, "done"]);
        if (Said(row, done, "done") is not { } ticked || (kind is EventKind ? Said(row, cell, kind.Name) : Answered(kind, cell)) is not { } said)
        {
            return;
        }

        var entry = new RecordedEntry(date, animal, kind, number, row.Number) { Note = Columns[row, "note"] };
        if (said == Answer.No && ticked == Answer.Yes && writes?.Device == "out")
        {
            // The device came out, and nothing was given: no step of her method, and no device left in her.
            Add(row, entry with { Note = $"nothing given: {Columns[row, "reason"]}", Details = [.. Details(row, kind, details, writes).Where(detail => NameFolding.Fold(detail.Name) is not "method")] }, wantsReason: true);
        }
        else if (said == Answer.No && ticked == Answer.Yes)
        {
            Problems.Add(SheetProblems.BothYesAndNo(_table, row, kind.Name));
        }
        else if ((said == Answer.Blank ? ticked : said) is var meant && meant == Answer.No)
        {
            Add(row, entry with { IsNotDone = true, Note = Columns[row, "reason"] is var why && entry.Note.Length > 0 ? $"{why} ({entry.Note})" : why, Details = OfThawed(row, kind, details) }, wantsReason: true);
        }
        else if (meant == Answer.Yes)
        {
            Done(row, entry, kind, cell, details, writes);
        }
    }

    private void Done(SourceRow row, RecordedEntry entry, Kind kind, string cell, List<(EntryDetail Detail, int Column)> details, SheetEntry? writes)
    {
        var isTick = cell.Length == 0 || (Yes.Contains(NameFolding.Fold(cell)) && (kind is not TestKind test || test.PlaceOf(cell) < 0));
        if (kind is not EventKind && isTick && kind is not (TestKind { InTheYards: false } or MeasureKind { InTheYards: false }))
        {
            Unanswered.Add((entry.Row, kind));
            return;
        }

        entry = entry with { Details = Details(row, kind, details, writes), Value = kind is EventKind ? "" : isTick ? "pending" : kind is MeasureKind ? cell.Replace(',', '.') : cell, Unit = kind is MeasureKind { Unit: { } unit } && !isTick ? unit.Symbol : "" };
        if (kind == _pregnancyTest && !isTick)
        {
            foreach (var wanted in kind.Details.Where(detail => NameFolding.Fold(detail.Name) is "method" or "done by" && entry.Detail(NameFolding.Fold(detail.Name)).Length == 0))
            {
                Problems.Add(SheetProblems.TestWithout(_table, row, kind.Name, wanted.Name));
            }
        }

        Add(row, entry, wantsReason: false);
    }

    /// <summary>Of a transfer that was not done: a straw that was read was thawed, and of which embryo stays on record.</summary>
    private static ImmutableArray<(string Name, string Value)> OfThawed(SourceRow row, Kind kind, List<(EntryDetail Detail, int Column)> details)
    {
        if (kind is not EventKind { Marks: Marks.Transfer })
        {
            return [];
        }

        var said = details.Where(detail => NameFolding.Fold(detail.Detail.Name) is "embryo" or "straw read").Select(detail => (detail.Detail.Name, Value: FilledSheet.Cell(row, detail.Column))).Where(detail => detail.Value.Length > 0).ToList();
        return said.Exists(detail => NameFolding.Fold(detail.Name) == "straw read") ? [.. said] : [];
    }

    private void Add(SourceRow row, RecordedEntry entry, bool wantsReason)
    {
        if (wantsReason && Columns[row, "reason"].Length == 0)
        {
            Problems.Add(SheetProblems.NoReason(_table, row));
            return;
        }

        Entries.Add(entry);
    }

    /// <summary>What is filled in; the session has a column of its own, and what becomes of a device is known where nobody wrote it.</summary>
    private ImmutableArray<(string Name, string Value)> Details(SourceRow row, Kind kind, List<(EntryDetail Detail, int Column)> columns, SheetEntry? writes)
    {
        var said = columns.Select(detail => (detail.Detail.Name, Value: FilledSheet.Cell(row, detail.Column))).Where(detail => detail.Value.Length > 0).ToList();
        foreach (var detail in kind.Details.Where(detail => !said.Exists(one => one.Name == detail.Name)))
        {
            var value = NameFolding.Fold(detail.Name) switch { "session" => Columns[row, "session"], "device" => writes?.Device ?? "", _ => "" };
            if (value.Length > 0)
            {
                said.Add((detail.Name, value));
            }
        }

        return [.. said];
    }

    /// <summary>Of a test or a measure anything but <c>no</c> is an answer; it is read as the records read it.</summary>
    private static Answer? Answered(Kind kind, string cell) => cell.Length == 0 ? Answer.Blank
        : No.Contains(NameFolding.Fold(cell)) && (kind is not TestKind test || test.PlaceOf(cell) < 0) ? Answer.No : Answer.Yes;

    private Answer? Said(SourceRow row, string cell, string column)
    {
        var said = NameFolding.Fold(cell);
        if (said.Length == 0 || Yes.Contains(said) || No.Contains(said))
        {
            return said.Length == 0 ? Answer.Blank : Yes.Contains(said) ? Answer.Yes : Answer.No;
        }

        var problem = SheetProblems.NotYesOrNo(_table, row, Unreadable.Unmarked(cell), column);
        if (!Problems.Contains(problem))
        {
            Problems.Add(problem);
        }

        return null;
    }

    private enum Answer
    {
        Blank,
        Yes,
        No,
    }
}
