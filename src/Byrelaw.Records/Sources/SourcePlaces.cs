using Byrelaw.Language.Canonical;

namespace Byrelaw.Records.Sources;

/// <summary>Where rows that were put into the landed form stand in their sources.</summary>
/// <param name="sources">What was read; null where a source is not there.</param>
/// <param name="opened">What the farm says of each, and its file as shown.</param>
/// <param name="animals">The rows of animals.</param>
/// <param name="events">The rows of what happened.</param>
/// <param name="vocabulary">The words.</param>
internal sealed class SourcePlaces(IReadOnlyList<TranslatedSource?> sources, IReadOnlyList<OpenedSource> opened, LandedRows animals, LandedRows events, Vocabulary vocabulary)
{
    /// <summary>The files whose rows reach as far as somebody says: not the sheets that are of one day.</summary>
    public IEnumerable<string> Reaching => Enumerable.Range(0, opened.Count).Where(place => opened[place].Source is not { Rows: SourceRows.Animals, AsAt: not null })
        .Where(place => !opened[place].Source.IsAde || opened[place].Source.Rows == SourceRows.Events).Select(place => sources[place]?.Table.Shown ?? opened[place].Shown).Distinct();

    /// <summary>Where a row stands.</summary>
    /// <param name="ofAnimals">Whether it is one of an animal.</param>
    /// <param name="line">Its line in the landed form.</param>
    public RecordPlace Of(bool ofAnimals, int line)
    {
        var place = PlaceOf(ofAnimals, line);
        var table = opened.Count == 0 ? null : sources[place.Source]?.Table;
        return new RecordPlace(opened.Count == 0 ? "" : table?.Shown ?? opened[place.Source].Shown, place.Row)
        {
            Cell = table is { IsSheet: true } && place.Column is { } column && place.Row > 0 ? $"{Letters(column)}{place.Row}" : null,
        };
    }

    /// <summary>A column as workbooks call it: A, B, ... Z, AA.</summary>
    private static string Letters(int column) => column < 26 ? ((char)('A' + column)).ToString() : Letters((column / 26) - 1) + (char)('A' + (column % 26));

    /// <summary>A problem of the landed form, where it stands in its source.</summary>
    public Diagnostic Of(Diagnostic problem, bool ofAnimals)
    {
        var place = PlaceOf(ofAnimals, problem.Line);
        if (place.Row == 0 || sources[place.Source] is not { } source)
        {
            return problem with { File = Of(ofAnimals, problem.Line).File, Line = Math.Max(1, place.Row), Column = 1, Length = 1, LineText = "" };
        }

        var row = source.Table.Row(place.Row);
        if (source.Flaw(row) is { } flaw)
        {
            return SourceFileProblems.FallsApart(source.Table.Shown, place.Row, row.Text, flaw);
        }

        var landed = Cell(problem, ofAnimals, out var heading);
        var column = ColumnOf(source, row, heading, Unreadable.Unmarked(landed));
        var (start, length) = PlaceIn(source, row, column);
        return problem with
        {
            File = source.Table.Shown,
            Line = place.Row,
            Column = start + 1,
            Length = Math.Max(1, length),
            Found = IsHint(landed, heading) ? $"this row may tell of {KindIn(problem)} besides what it is read as" : landed == Unreadable.Of("") && heading == "date" ? "a result stands here, and no day on which it was found" : InOwnWords(problem.Found, landed),
            Expected = IsHint(landed, heading) ? "whether it does is not known until a line says so" : Expected(problem, source, heading),
            Help = IsHint(landed, heading) ? $"say in a line below its `from` what the text means that says so; where it tells of no {KindIn(problem)}, write it behind `leave out`, with `which is not {KindIn(problem)}`"
                : problem.Code == "R0140" && source.Column("animal") is { } animal ? $"where it is one animal's number with and without zeros, write `animal in {NameText.Text(animal.Heading)}, by number`"
                : problem.Code == "R0142" && heading == "kind" ? KindAdvice.BelowColumn(landed, vocabulary)
                : problem.Code == "R0173" && column >= 0 && landed.Length > 0 && !Unreadable.Is(landed) && problem.Help is null ? $"say what it means, in a line such as `- {NameText.Text(landed)} is blank` below that column, with the value that it stands for in place of `blank`"
                : Written(problem, source, heading, Unreadable.Unmarked(landed)) is { } written ? written
                : !Unreadable.Is(landed) || problem.Code == "R0139" ? problem.Help : null,
            LineText = row.Text,
        };
    }

    /// <summary>What a row tells of besides is landed as a row of its own whose day of entry cannot be read (<see cref="EventRows.AddHint"/>).</summary>
    private static bool IsHint(string landed, string heading) => heading == "recorded" && landed == Unreadable.Of("");

    private string KindIn(Diagnostic problem) => CellSplitter.Split(problem.LineText)[events.Headings.ToList().IndexOf("kind")].Value;

    /// <summary>Whether a problem is about a cell of a column that is not there: that is told once, of the column.</summary>
    public bool IsOfMissingColumn(Diagnostic problem, bool ofAnimals) => Cell(problem, ofAnimals, out _) == Unreadable.NotThere;

    private RowPlace PlaceOf(bool ofAnimals, int line)
    {
        var places = (ofAnimals ? animals : events).Places;
        return line >= 0 && line < places.Count ? places[line] : default;
    }

    /// <summary>The cell of the landed form that a problem points at, and its column.</summary>
    private string Cell(Diagnostic problem, bool ofAnimals, out string heading)
    {
        var headings = (ofAnimals ? animals : events).Headings;
        var cells = CellSplitter.Split(problem.LineText);
        var at = cells.FindIndex(cell => cell.Start + 1 == problem.Column);
        heading = at >= 0 && at < headings.Count ? headings[at] : "";
        return at >= 0 ? cells[at].Value : "";
    }

    /// <summary>The column of the source that a landed cell came from: the one of its line, else the one that says the same.</summary>
    private static int ColumnOf(TranslatedSource source, SourceRow row, string heading, string cell)
    {
        foreach (var column in source.Source.Columns)
        {
            if (column.What.Name == heading && source.Table.Find(column.Heading) is >= 0 and var found)
            {
                return found;
            }
        }

        return cell.Length == 0 ? -1 : Array.IndexOf(row.Cells, cell);
    }

    private static (int Start, int Length) PlaceIn(TranslatedSource source, SourceRow row, int column)
    {
        var cells = CellSplitter.Split(row.Text, source.Source.Separator);
        return column >= 0 && column < cells.Count ? (cells[column].Start, cells[column].Length) : (0, Math.Max(1, row.Text.Length));
    }

    private static string InOwnWords(string found, string landed) =>
        Unreadable.Is(landed) ? found.Replace($"`{landed}`", $"`{Unreadable.Unmarked(landed)}`", StringComparison.Ordinal) : found;

    /// <summary>The line that says how such a cell is written; null where none would read it.</summary>
    private static string? Written(Diagnostic problem, TranslatedSource source, string heading, string cell)
    {
        if (problem.Code == "R0151" && !source.Source.HasDecimalComma && source.Source.Thousands is null && cell.Contains(',', StringComparison.Ordinal))
        {
            return (new CellNumbers(true).Landed(cell, 1) is { } tenths && NumberCell.TryRead(Encoding.UTF8.GetBytes(tenths.TrimStart('<', '>')), out _), new CellNumbers(false, ',').Landed(cell, 1) is not null) switch
            {
                (true, true) => $"write `thousands comma` below its `from`, if a comma parts the thousands here; `decimal comma`, if it stands before the tenths",
                (_, true) => "write `thousands comma` below its `from`, if a comma parts the thousands here",
                (true, _) => "write `decimal comma` below its `from`, if a comma stands before the tenths here",
                _ => null,
            };
        }

        if (!IsOfDay(problem, heading))
        {
            return null;
        }

        foreach (var hasShort in source.Source.HasShortYears ? [true] : new[] { false, true })
        {
            string[] orders = [.. new[] { source.Source.Dates, DateOrder.DayFirst, DateOrder.MonthFirst, DateOrder.YearFirst }.Distinct().Where(order => new CellDates(order, hasShort, null).LandedSpan(cell) is not null).Select(order => $"`dates {order switch { DateOrder.DayFirst => "day", DateOrder.MonthFirst => "month", _ => "year" }} first`")];
            if (orders.Length > 0)
            {
                var isOwn = new CellDates(source.Source.Dates, hasShort, null).LandedSpan(cell) is not null;
                return isOwn && !hasShort ? null : $"{(isOwn ? "" : $"it fits {string.Join(" and ", orders)}")}{(hasShort && !source.Source.HasShortYears ? $"{(isOwn ? "it fits" : ", with")} `short years`" : "")}: write that below its `from`, where all its dates are so";
            }
        }

        return null;
    }

    /// <summary>Whether a cell is no day; what is only hard to believe of one that is read (R02) is said in other words.</summary>
    private static bool IsOfDay(Diagnostic problem, string heading) =>
        problem.Code is "R0121" or "R0125" || (heading is "date" or "recorded" or "parity on" && !problem.Code.StartsWith("R02", StringComparison.Ordinal));

    /// <summary>What was expected, as this source writes it.</summary>
    private static string? Expected(Diagnostic problem, TranslatedSource source, string heading) =>
        IsOfDay(problem, heading) ? source.Source.Dates switch
        {
            DateOrder.DayFirst => "expected a day as this source writes it, the day first, such as 19/10/2026",
            DateOrder.MonthFirst => "expected a day as this source writes it, the month first, such as 10/19/2026",
            _ => problem.Expected,
        }
        : problem.Expected;
}
