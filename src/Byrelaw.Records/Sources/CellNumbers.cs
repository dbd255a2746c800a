namespace Byrelaw.Records.Sources;

/// <summary>Numbers as a source writes them, turned into the landed form.</summary>
/// <param name="hasDecimalComma">Whether a comma stands before the tenths.</param>
/// <param name="thousands">What stands between thousands; null for nothing.</param>
internal sealed class CellNumbers(bool hasDecimalComma, char? thousands = null)
{
    /// <summary>The number with its sign of a limit and its unit; null where it is none so written.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="times">What it is multiplied by.</param>
    public string? Landed(string cell, double times)
    {
        var text = cell;
        if (!IsNumber(cell))
        {
            return times == 1 ? cell : null;
        }

        if (thousands is { } sign && WithoutThousands(text, sign) is var plain)
        {
            if (plain is null)
            {
                return null;
            }

            text = plain;
        }

        if (hasDecimalComma)
        {
            if (text.Contains('.', StringComparison.Ordinal) || text.Count(sign => sign == ',') > 1)
            {
                return null;
            }

            text = text.Replace(',', '.');
        }

        if (times == 1)
        {
            return text;
        }

        var start = text.Length > 0 && text[0] is '<' or '>' ? 1 : 0;
        var end = start;
        while (end < text.Length && (char.IsAsciiDigit(text[end]) || text[end] is '.' or '-'))
        {
            end++;
        }

        return decimal.TryParse(text.AsSpan(start, end - start), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number)
            && Times(number, times) is { } product
            ? string.Concat(text.AsSpan(0, start), product.ToString(CultureInfo.InvariantCulture), text.AsSpan(end))
            : null;
    }

    /// <summary>The number without the signs between its thousands; null where one stands elsewhere.</summary>
    private static string? WithoutThousands(string text, char sign)
    {
        var start = text.AsSpan().IndexOfAnyInRange('0', '9');
        if (!text.Contains(sign, StringComparison.Ordinal))
        {
            return text;
        }

        var end = start;
        while (end < text.Length && (char.IsAsciiDigit(text[end]) || text[end] == sign))
        {
            end++;
        }

        var groups = start < 0 ? [] : text[start..end].Split(sign);
        return groups is [{ Length: >= 1 and <= 3 }, _, ..] && groups.Skip(1).All(group => group.Length == 3) && !text.AsSpan(0, start).Contains(sign) && !text.AsSpan(end).Contains(sign)
            ? text.Replace(sign.ToString(), "", StringComparison.Ordinal) : null;
    }

    /// <summary>Whether a number is meant: a word's full stop is no decimal point.</summary>
    private static bool IsNumber(string cell) => cell.TrimStart('<', '>', '-', '+', ' ') is [var first, ..] && (char.IsAsciiDigit(first) || first is '.' or ',');

    private static decimal? Times(decimal number, double times)
    {
        try
        {
            return number * (decimal)times;
        }
        catch (OverflowException)
        {
            return null;
        }
    }
}
