namespace Byrelaw.Language.Lexing;

/// <summary>Reads a number, a per cent or a date, and everything that was meant to be one.</summary>
internal static class NumberScanner
{
    private const int MostDigits = 15;

    /// <summary>Reads from the first digit or the minus sign.</summary>
    public static Token Read(SourceFile file, int start)
    {
        if (DateScanner.DayFirst(file, start) is { } written)
        {
            return written;
        }

        var text = file.Text;
        var end = start + 1;
        while (end < text.Length && (char.IsAsciiDigit(text[end]) || (text[end] is '.' or ',' or '/' or '-' or '–' or ':' && IsDigitAt(text, end + 1))))
        {
            end++;
        }

        var span = new SourceSpan(file, start, end - start);
        var blob = span.Text;
        if (end < text.Length && WordScanner.Starts(text, end))
        {
            var word = span with { Length = WordScanner.End(text, end, out _) - start };
            return Bad(word, NumberProblems.RunTogether(word, blob));
        }

        if (DateScanner.FromDigits(span) is { } date)
        {
            return date;
        }

        return IsPlain(blob) ? Plain(file, span, blob) : Bad(span, NumberProblems.Unreadable(span));
    }

    private static Token Plain(SourceFile file, SourceSpan span, string blob)
    {
        if (blob.Count(char.IsAsciiDigit) > MostDigits || !double.TryParse(blob, NumberStyles.Float, CultureInfo.InvariantCulture, out var value))
        {
            return Bad(span, NumberProblems.TooLong(span));
        }

        var isPercent = span.End < file.Text.Length && file.Text[span.End] == '%';
        return isPercent
            ? new Token(TokenKind.Percent, span with { Length = span.Length + 1 }) { Text = blob + "%", Number = value }
            : new Token(TokenKind.Number, span) { Text = blob, Number = value };
    }

    private static bool IsPlain(string blob)
    {
        var digits = blob.AsSpan().TrimStart('-');
        var point = digits.IndexOf('.');
        return digits.IndexOfAnyExceptInRange('0', '9') == point
            && (point < 0 || digits[(point + 1)..].IndexOfAnyExceptInRange('0', '9') < 0);
    }

    private static bool IsDigitAt(string text, int at) => at < text.Length && char.IsAsciiDigit(text[at]);

    private static Token Bad(SourceSpan span, Diagnostic problem) => new(TokenKind.Bad, span) { Problem = problem };
}
