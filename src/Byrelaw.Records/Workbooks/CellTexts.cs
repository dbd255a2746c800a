namespace Byrelaw.Records.Workbooks;

/// <summary>What a workbook's cells hold, written as the source says that it writes dates and numbers: so they are read like any others.</summary>
/// <param name="source">How it does.</param>
internal sealed class CellTexts(RecordSource source)
{
    private const double MostExact = 1e15;

    /// <summary>The text; empty for an empty cell.</summary>
    public string Of(object? value) => value switch
    {
        null => "",
        string text => text.Trim(),
        DateTime day => Date(day),
        double number => Number(number),
        int number => number.ToString(CultureInfo.InvariantCulture),
        bool isTrue => isTrue ? "TRUE" : "FALSE",
        TimeSpan time => time.ToString("c", CultureInfo.InvariantCulture),
        _ => Convert.ToString(value, CultureInfo.InvariantCulture) ?? "",
    };

    private string Date(DateTime day)
    {
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
