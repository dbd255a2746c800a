namespace Byrelaw.Records.Workbooks;

/// <summary>How much of a date a cell shows.</summary>
internal enum ShownDate
{
    /// <summary>The day.</summary>
    Day,

    /// <summary>The month and no day, as <c>Aug-26</c> does.</summary>
    Month,

    /// <summary>The year alone.</summary>
    Year,
}

/// <summary>Reads number formats (ECMA-376, Part 1, 18.8.31) as far as they say what of a date is shown.</summary>
internal static class ShownDates
{
    /// <summary>What a format shows; a day where it cannot be told, for the whole date stands in the cell.</summary>
    public static ShownDate Of(string? format)
    {
        var signs = Signs(format ?? "");
        return !signs.Contains('y', StringComparison.Ordinal) || signs.Contains('d', StringComparison.Ordinal) || signs.Contains('h', StringComparison.Ordinal) ? ShownDate.Day
            : signs.Contains('m', StringComparison.Ordinal) ? ShownDate.Month
            : ShownDate.Year;
    }

    /// <summary>The first part of a format in small letters, without what is quoted, escaped or in brackets.</summary>
    private static string Signs(string format)
    {
        var signs = new StringBuilder();
        for (var i = 0; i < format.Length && format[i] != ';'; i++)
        {
            switch (format[i])
            {
                case '\\' or '_' or '*':
                    i++;
                    break;
                case '"' or '[':
                    var end = format.IndexOf(format[i] == '"' ? '"' : ']', i + 1);
                    i = end < 0 ? format.Length : end;
                    break;
                default:
                    signs.Append(char.ToLowerInvariant(format[i]));
                    break;
            }
        }

        return signs.ToString();
    }
}
