namespace Byrelaw.Records.Suggesting;

/// <summary>Lines that say how a file writes dates and numbers.</summary>
internal static class WrittenLines
{
    private const int Indent = 4;

    /// <summary>The one order in which the dates of a file can be read, by more than one cell; null where several can be, or none.</summary>
    public static DateOrder? Order(SuggestedFile file)
    {
        ColumnProfile[] columns = [.. file.Columns.Where(column => column.HoldsDates)];
        var wrong = ColumnProfile.Orders.ToDictionary(order => order, order => columns.Sum(column => column.NoDates(order).Count));
        return columns.Length > 0 && wrong.Where(one => one.Value <= wrong.Values.Min() + 1).ToList() is [var only] ? only.Key : null;
    }

    /// <summary>In which order dates stand, and whether years are short. Where cells allow several orders, a person chooses.</summary>
    /// <param name="file">The file.</param>
    /// <param name="all">All files: how the others write their dates speaks for one order.</param>
    public static IEnumerable<SuggestedLine> Dates(SuggestedFile file, IReadOnlyList<SuggestedFile> all)
    {
        ColumnProfile[] columns = [.. file.Columns.Where(column => column.HoldsDates)];
        if (columns.Length == 0 || (file.Table.IsSheet && Array.TrueForAll(columns, column => column.NoDates(DateOrder.YearFirst).Count == 0)))
        {
            yield break;
        }

        var orders = ColumnProfile.Orders.Select(order => (Order: order, Wrong: columns.SelectMany(column => column.NoDates(order)).ToList())).ToList();
        var fewest = orders.Min(order => order.Wrong.Count);
        var fitting = orders.FindAll(order => order.Wrong.Count == fewest);
        if (fitting.Count > 1 && !columns.Any(column => column.Texts.Keys.Any(Differs)))
        {
            fitting.RemoveAll(fit => fit.Order == DateOrder.MonthFirst);
        }

        var isByOne = orders.Exists(order => order.Wrong.Count == fewest + 1);
        foreach (var (order, wrong) in fitting.Where(fit => fit.Order != DateOrder.YearFirst))
        {
            // One cell may be a slip: by itself it decides nothing.
            yield return new SuggestedLine(
                Indent, order == DateOrder.DayFirst ? "dates day first" : "dates month first", IsOpen: fitting.Count > 1 || wrong.Count > 0 || isByOne,
                wrong.Count > 0 ? $"{Cells(wrong.Count)} no date so, such as {Quoted.Of(wrong[0])}" : orders.Find(other => other.Order == DateOrder.YearFirst).Wrong.FirstOrDefault(cell => cell.Any(char.IsAsciiLetter)) is { } named && !columns.Any(column => column.Texts.Keys.Any(Differs)) ? $"such as {Quoted.Of(named)}" : fitting.Count > 1 ? $"no cell decides: {Ambiguous(columns, order)}{Beside(order, file, all)}" : Deciding(columns));
        }

        if (columns.Any(column => column.HasShortYears))
        {
            yield return new SuggestedLine(Indent, "short years");
        }
    }

    /// <summary>Whether a comma stands before the tenths.</summary>
    public static IEnumerable<SuggestedLine> Decimals(SuggestedFile file)
    {
        string[] numbers = [.. file.Columns.Where(column => !column.HoldsDates).SelectMany(column => column.Texts.Keys).Where(ColumnProfile.IsNumber)];
        string[] commas = [.. numbers.Where(cell => cell.Contains(',', StringComparison.Ordinal))];
        if (commas.Length == 0)
        {
            if (file.Columns.Where(column => !column.HoldsDates).SelectMany(column => column.Texts.Keys).FirstOrDefault(IsOfThousands) is { } thousand)
            {
                yield return new SuggestedLine(Indent, "thousands comma", IsOpen: true, $"such as {Quoted.Of(thousand)}");
            }

            yield break;
        }

        string[] thousands = [.. file.Columns.Where(column => !column.HoldsDates).SelectMany(column => column.Texts.Keys).Where(IsOfThousands)];
        if (thousands.Length == commas.Length || thousands.Any(cell => cell.Count(sign => sign == ',') > 1 || cell.Contains('.', StringComparison.Ordinal)))
        {
            yield return new SuggestedLine(Indent, "thousands comma", IsOpen: true, $"such as {Quoted.Of(thousands[0])}");
        }

        var points = numbers.Count(cell => cell.Contains('.', StringComparison.Ordinal));
        var mayBeThousands = commas.All(cell => cell.Length - cell.IndexOf(',', StringComparison.Ordinal) == 4);
        yield return new SuggestedLine(
            Indent, "decimal comma", IsOpen: points > 0 || mayBeThousands,
            points > 0 ? $"{Cells(commas.Length)} so, such as {Quoted.Of(commas[0])}; {points} with a point"
                : mayBeThousands ? $"or is {Quoted.Of(commas[0])} a thousand and more?" : $"such as {Quoted.Of(commas[0])}");
    }

    private static bool IsOfThousands(string cell) => cell.Contains(',', StringComparison.Ordinal) && char.IsAsciiDigit(cell[0]) && cell.Split('.')[0].Split(',') is [{ Length: <= 3 }, _, ..] groups
        && groups.Skip(1).All(group => group.Length == 3) && cell.All(sign => char.IsAsciiDigit(sign) || sign is ',' or '.');

    /// <summary>Whether a text is another day in another order.</summary>
    private static bool Differs(string cell) => cell.Split(['/', '.', '-']) is [{ Length: <= 2 } first, { Length: <= 2 } second, _] && first != second;

    /// <summary>Which of the other files have the same order, beyond doubt.</summary>
    private static string Beside(DateOrder order, SuggestedFile file, IReadOnlyList<SuggestedFile> all)
    {
        string[] others = [.. all.Where(other => other != file && Order(other) == order).Select(other => other.Name).Distinct().Take(2)];
        return others.Length == 0 ? "" : $"; so {(others.Length == 1 ? "has" : "have")} {Phrases.And(others)}";
    }

    private static string Cells(int count) => count == 1 ? "1 cell is" : $"{count} cells are";

    private static string Ambiguous(ColumnProfile[] columns, DateOrder order)
    {
        var cell = columns.SelectMany(column => column.Texts.Keys).FirstOrDefault(text => text.Split(['/', '.', '-']) is [var first, var second, _] && first != second) ?? columns[0].Texts.Keys.First();
        var parts = cell.Split(['/', '.', '-']);
        var month = order == DateOrder.DayFirst ? parts[1] : parts[0];
        var day = order == DateOrder.DayFirst ? parts[0] : parts[1];
        return $"{Quoted.Of(cell)} is {day.TrimStart('0')} {Month(month)}";
    }

    private static string Month(string number) =>
        int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var month) && month is >= 1 and <= 12 ? CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month) : number;

    private static string Deciding(ColumnProfile[] columns)
    {
        var other = columns.Select(column => (column, Cells: column.NoDates(DateOrder.MonthFirst).Count > 0 ? column.NoDates(DateOrder.MonthFirst) : column.NoDates(DateOrder.DayFirst))).MaxBy(one => one.Cells.Count);
        return other.Cells.Count == 1 ? $"{Quoted.Of(other.Cells[0])} in {Quoted.Of(other.column.Heading)} allows nothing else"
            : $"{other.Cells.Count} different cells of {Quoted.Of(other.column.Heading)} allow nothing else";
    }
}
