namespace Byrelaw.Records.Sources;

/// <summary>What a source says of its rows, beside the table that they stand in.</summary>
internal sealed class TranslatedSource
{
    private const int MostHerds = 1 << 14;

    // By the line itself: two lines are never taken for one, and nothing is compared at every cell.
    private readonly Dictionary<SourceColumn, (int Place, MeaningsOfColumn Meanings)> _read = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<string, SourceColumn> _columns = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _everyRow = new(StringComparer.Ordinal);
    private readonly (int Column, string Cell)[] _leftOut;
    private readonly Dictionary<string, string> _herds = new(StringComparer.Ordinal);

    /// <summary>Finds the columns.</summary>
    public TranslatedSource(int place, RecordSource source, SourceTable table, LocalDate? today)
    {
        Place = place;
        Source = source;
        Table = table;
        Rows = table.Rows;
        Dates = new CellDates(source.Dates, source.HasShortYears, today);
        Numbers = new CellNumbers(source.HasDecimalComma, source.Thousands);
        foreach (var column in source.Columns)
        {
            _read.Add(column, (table.Find(column.Heading), new MeaningsOfColumn(column, table)));
            _ = column.What is LandedTarget landed && _columns.TryAdd(landed.Column, column);
        }

        foreach (var every in source.EveryRow)
        {
            _ = every.What is LandedTarget landed && _everyRow.TryAdd(landed.Column, every.Value);
        }

        _leftOut = [.. source.RowsLeftOut.Select(row => (table.Find(row.Heading), NameFolding.Fold(row.Cell)))];
    }

    private TranslatedSource(TranslatedSource of, string herd, IReadOnlyList<SourceRow> rows)
    {
        (Place, Source, Table, Dates, Numbers) = (of.Place, of.Source, of.Table, of.Dates, of.Numbers);
        (_read, _columns, _everyRow, _leftOut, _herds) = (of._read, of._columns, of._everyRow, of._leftOut, of._herds);
        (Herd, Rows) = (herd, rows);
    }

    /// <summary>The same with the rows that count in one herd.</summary>
    public TranslatedSource OfHerd(string herd, IReadOnlyList<SourceRow> rows) => new(this, herd, rows);

    /// <summary>The herd whose rows these are; null for all.</summary>
    public string? Herd { get; }

    /// <summary>The rows that are read.</summary>
    public IReadOnlyList<SourceRow> Rows { get; }

    /// <summary>The place among all sources.</summary>
    public int Place { get; }

    /// <summary>What the farm says of it.</summary>
    public RecordSource Source { get; }

    /// <summary>What stands in it.</summary>
    public SourceTable Table { get; }

    /// <summary>How its dates are read.</summary>
    public CellDates Dates { get; }

    /// <summary>How its numbers are read.</summary>
    public CellNumbers Numbers { get; }

    /// <summary>What is wrong with a row as a whole, so that nobody can tell what it says; null for nothing.</summary>
    public string? Flaw(SourceRow row) =>
        row.Flaw ?? (Array.Exists(_leftOut, said => Unreadable.Is(Text(row, said.Column))) ? "whether this row is left out hangs on a cell that cannot be read" : null);

    /// <summary>Whether the farm leaves a row out.</summary>
    public bool IsLeftOut(SourceRow row) => Array.Exists(_leftOut, said => Says(row[said.Column], said.Cell));

    /// <summary>Whether a cell says what a line names: most lines name a blank, and most cells are none.</summary>
    private static bool Says(string cell, string folded) => cell.Length == 0 || folded.Length == 0 ? cell.Length == folded.Length : NameFolding.Fold(cell) == folded;

    /// <summary>How many rows the farm leaves out, line by line.</summary>
    public IEnumerable<RowsLeftOut> LeftOut()
    {
        for (var line = 0; line < _leftOut.Length; line++)
        {
            var (column, cell) = _leftOut[line];
            if (Rows.Count(row => Says(row[column], cell) && Flaw(row) is null) is > 0 and var count)
            {
                yield return new RowsLeftOut(Table.Shown, Source.RowsLeftOut[line].Heading, Source.RowsLeftOut[line].Cell, count);
            }
        }
    }

    /// <summary>The texts that the farm reads as left out in the column that says what happened, and how many rows that is.</summary>
    public IEnumerable<WordLeftOut> WordsLeftOut()
    {
        if (Source.IsAde || Column("kind") is not { } kinds || _read[kinds].Place < 0)
        {
            return [];
        }

        var rows = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var row in Rows)
        {
            Cell(kinds, row, out var meaning);
            if (meaning?.Is is IsLeftOut && Flaw(row) is null && !IsLeftOut(row))
            {
                rows[meaning.Cell] = rows.GetValueOrDefault(meaning.Cell) + 1;
            }
        }

        return rows.Select(one => new WordLeftOut(one.Key, one.Value));
    }

    /// <summary>The line about a column of the landed files; null where there is none.</summary>
    public SourceColumn? Column(string landed) => _columns.GetValueOrDefault(landed);

    /// <summary>What every row says of a column of the landed files; null where nothing is said.</summary>
    public string? EveryRow(string landed) => _everyRow.GetValueOrDefault(landed);

    /// <summary>A cell of a column: what its text means, and the text itself; a lone dash is blank.</summary>
    /// <param name="column">The column.</param>
    /// <param name="row">The row.</param>
    /// <param name="meaning">What the farm says that it means; null where it is read as it stands.</param>
    /// <returns>The text; marked where two meanings fit, or where the file may have been cut in it.</returns>
    public string Cell(SourceColumn column, SourceRow row, out CellMeaning? meaning)
    {
        var (place, meanings) = _read[column];
        var cell = Text(row, place);
        meaning = meanings.Find(cell, row, out var areTwo);
        if (areTwo)
        {
            meaning = null;
            return Unreadable.Of(cell);
        }

        return cell == "-" && meaning is null ? "" : cell;
    }

    /// <summary>What a column says in a row, in the spelling of the landed files; blank where its text means nothing.</summary>
    public string Said(SourceColumn column, SourceRow row)
    {
        var cell = Cell(column, row, out var meaning);
        return meaning?.Is switch { IsBlank => "", IsValue said => said.Text, _ => cell };
    }

    /// <summary>Whom a row is about: her number; marked where what identifies her is nobody's, or more than one animal's.</summary>
    public string Animal(SourceRow row, FoundAnimals found)
    {
        if (Column("animal") is not { } column)
        {
            return EveryRow("animal") ?? "";
        }

        var text = Said(column, row);
        return column.IsByNumber ? found.ByNumber(text) : column.FoundBy is { } fact ? found.Number(fact, text) : text;
    }

    /// <summary>Whether the rows say which herd they are of.</summary>
    public bool HasHerds => Column("herd") is not null || EveryRow("herd") is not null;

    /// <summary>The herd that a row says it is of, as it writes it; empty where it does not say so, or where that cannot be read.</summary>
    public string HerdAsWritten(SourceRow row)
    {
        var herd = Column("herd") is { } column ? Said(column, row) : EveryRow("herd") ?? "";
        return Unreadable.Is(herd) ? "" : herd;
    }

    /// <summary>The same, so that all spellings of one herd are one.</summary>
    public string HerdOf(SourceRow row)
    {
        var herd = HerdAsWritten(row);
        if (herd.Length == 0)
        {
            return "";
        }

        if (_herds.TryGetValue(herd, out var folded))
        {
            return folded;
        }

        folded = AlikeText.OfHerd(herd);
        if (_herds.Count < MostHerds)
        {
            _herds.Add(herd, folded);
        }

        return folded;
    }

    /// <summary>Whether a row is of another herd than the one that is read: what brings an animal into a herd, out of it or into a mob there counts in no other.</summary>
    public bool IsOfAnotherHerd(SourceRow row) => Herd is { } herd && HerdOf(row) is { Length: > 0 } its && its != herd;

    /// <summary>Whether a kind happens within one herd: coming, going, and moves from mob to mob.</summary>
    public static bool IsWithinOneHerd(Kind? kind) => kind is EventKind { Effect: not HerdEffect.None } or EventKind { IsMobMove: true };

    /// <summary>The text of a cell, marked where the file may have been cut in it, or where there is no such column.</summary>
    public static string Text(SourceRow row, int column)
    {
        if (column < 0)
        {
            return Unreadable.NotThere;
        }

        var cell = row[column];
        return row.IsCut && cell.Length > 0 && column == Array.FindLastIndex(row.Cells, one => one.Length > 0) ? Unreadable.Of(cell) : cell;
    }

    /// <summary>The day on which something happened in the landed form; a month or a year too, of which the day is not known. Marked where it is none of these.</summary>
    public string EventDate(string cell) => cell.Length == 0 ? "" : Dates.LandedSpan(cell) ?? Unreadable.Of(cell);

    /// <summary>A date of the row in the landed form, marked where it is none.</summary>
    public string Date(string cell) => cell.Length == 0 ? "" : Dates.Landed(cell) ?? Unreadable.Of(cell);

    /// <summary>A number of the row in the landed form, marked where it is none.</summary>
    public string Number(string cell, double times) => cell.Length == 0 ? "" : Numbers.Landed(cell, times) ?? Unreadable.Of(cell);
}
