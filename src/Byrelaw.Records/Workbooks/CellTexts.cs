namespace Byrelaw.Records.Workbooks;

/// <summary>What a workbook's cells hold, written as the source says that it writes dates and numbers: so they are read like any others.</summary>
/// <param name="source">How it does.</param>
internal sealed class CellTexts(RecordSource source)
{
    private const double MostExact = 1e15;

    /// <summary>The text; empty for an empty cell.</summary>
    /// <param name="value">What the cell holds.</param>
    /// <param name="format">How the cell shows it; null where nothing is said.</param>
    public string Of(object? value, string? format) => value switch
    {
        null => "",
        string text => text.Trim(),
        DateTime day => Date(day, ShownDates.Of(format)),
        double number => Number(number),
        int number => number.ToString(CultureInfo.InvariantCulture),
        bool isTrue => isTrue ? "TRUE" : "FALSE",
        TimeSpan time => time.ToString("c", CultureInfo.InvariantCulture),
        _ => Convert.ToString(value, CultureInfo.InvariantCulture) ?? "",
    };

    /// <summary>Who typed a month saw a month: the first day of it, which the workbook keeps, is nobody's word.</summary>
    private string Date(DateTime day, ShownDate shown)
    {
        if (shown != ShownDate.Day)
        {
            var isMonth = shown == ShownDate.Month;
            return day.ToString(!isMonth ? "yyyy" : source.Dates is DateOrder.DayFirst or DateOrder.MonthFirst ? "MM/yyyy" : "yyyy-MM", CultureInfo.InvariantCulture);
        }

        var date = day.ToString(source.Dates switch { DateOrder.DayFirst => "dd/MM/yyyy", DateOrder.MonthFirst => "MM/dd/yyyy", _ => "yyyy-MM-dd" }, CultureInfo.InvariantCulture);
        return day.TimeOfDay == TimeSpan.Zero ? date : $"{date} {day.ToString("HH:mm:ss", CultureInfo.InvariantCulture)}";
    }

    /// <summary>With as many figures as a workbook shows at most.</summary>
    private string Number(double number)
    {
        var text = Math.Abs(number) < MostExact ? ((decimal)number).ToString(CultureInfo.InvariantCulture) : number.ToString("R", CultureInfo.InvariantCulture);
        return source.HasDecimalComma ? text.Replace('.', ',') : text;
    }
}
