namespace Byrelaw.Records.Sources;

/// <summary>What a source says of its rows, beside the table that they stand in.</summary>
internal sealed class TranslatedSource
{
    private readonly Dictionary<SourceColumn, MeaningsOfColumn> _meanings = [];
    private readonly (int Column, string Cell)[] _leftOut;

    /// <summary>Finds the columns.</summary>
    public TranslatedSource(int place, RecordSource source, SourceTable table, LocalDate? today)
    {
        Place = place;
        Source = source;
        Table = table;
        Dates = new CellDates(source.Dates, source.HasShortYears, today);
        Numbers = new CellNumbers(source.HasDecimalComma);
        foreach (var column in source.Columns)
        {
            _meanings.Add(column, new MeaningsOfColumn(column, table));
        }

        _leftOut = [.. source.RowsLeftOut.Select(row => (table.Find(row.Heading), NameFolding.Fold(row.Cell)))];
    }

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

    /// <summary>Whether the farm leaves a row out.</summary>
    public bool IsLeftOut(SourceRow row) => Array.Exists(_leftOut, said => said.Column >= 0 && NameFolding.Fold(row[said.Column]) == said.Cell);

    /// <summary>The line about a column of the landed files; null where there is none.</summary>
    public SourceColumn? Column(string landed) => Source.Columns.FirstOrDefault(column => column.What is LandedTarget target && target.Column == landed);

    /// <summary>What every row says of a column of the landed files; null where nothing is said.</summary>
    public string? EveryRow(string landed) => Source.EveryRow.FirstOrDefault(one => one.What is LandedTarget target && target.Column == landed)?.Value;

    /// <summary>A cell of a column: what its text means, and the text itself; a lone dash is blank.</summary>
    /// <param name="column">The column.</param>
    /// <param name="row">The row.</param>
    /// <param name="meaning">What the farm says that it means; null where it is read as it stands.</param>
    /// <returns>The text; marked where two meanings fit, or where the file may have been cut in it.</returns>
    public string Cell(SourceColumn column, SourceRow row, out CellMeaning? meaning)
    {
        var cell = Text(row, Table.Find(column.Heading));
        meaning = _meanings[column].Find(cell, row, out var areTwo);
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
        return column.FoundBy is { } fact ? found.Number(fact, text) : text;
    }

    /// <summary>The text of a cell, marked where the file may have been cut in it.</summary>
    public static string Text(SourceRow row, int column)
    {
        var cell = row[column];
        return row.IsCut && cell.Length > 0 && column == Array.FindLastIndex(row.Cells, one => one.Length > 0) ? Unreadable.Of(cell) : cell;
    }

    /// <summary>A date of the row in the landed form, marked where it is none.</summary>
    public string Date(string cell) => cell.Length == 0 ? "" : Dates.Landed(cell) ?? Unreadable.Of(cell);

    /// <summary>A number of the row in the landed form, marked where it is none.</summary>
    public string Number(string cell, double times) => cell.Length == 0 ? "" : Numbers.Landed(cell, times) ?? Unreadable.Of(cell);
}
