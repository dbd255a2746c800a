namespace Byrelaw.Language.Lexing;

/// <summary>Reads a word: a letter, then letters, digits, hyphens and apostrophes. With a slash it is a unit.</summary>
internal static class WordScanner
{
    /// <summary>Whether a word starts here.</summary>
    public static bool Starts(string text, int at) => text[at] == '°' || IsLetter(text, at, out _);

    /// <summary>Reads the word that starts here.</summary>
    public static Token Read(SourceFile file, int start)
    {
        if (DateScanner.MonthFirst(file, start) is { } date)
        {
            return date;
        }

        var at = End(file.Text, start, out var isUnit);
        var span = new SourceSpan(file, start, at - start);
        var text = span.Text;
        if (!Scripts.IsOne(text))
        {
            return new Token(TokenKind.Bad, span) { Problem = TextProblems.MixedScripts(span) };
        }

        return new Token(isUnit ? TokenKind.Unit : TokenKind.Word, span) { Text = text, Folded = FoldedWords.Of(text) };
    }

    /// <summary>The offset after the word that starts here.</summary>
    public static int End(string text, int start, out bool isUnit)
    {
        isUnit = text[start] == '°';
        var at = isUnit ? start + 1 : start;
        while (at < text.Length)
        {
            if (IsLetter(text, at, out var length) || IsDigitOrMark(text, at, out length))
            {
                at += length;
            }
            else if (IsHyphen(text[at]) && at > start && at + 1 < text.Length && (IsLetter(text, at + 1, out _) || char.IsDigit(text[at + 1])))
            {
                at++;
            }
            else if (text[at] is '\'' or '\u2019' or '\u02BC' && at > start)
            {
                at++;
            }
            else if (text[at] == '/' && at > start && at + 1 < text.Length && IsLetter(text, at + 1, out _))
            {
                isUnit = true;
                at++;
            }
            else
            {
                break;
            }
        }

        return at;
    }

    private static bool IsHyphen(char c) => c is '-' or '\u2010' or '\u2011';

    private static bool IsLetter(string text, int at, out int length)
    {
        var isRune = Rune.TryGetRuneAt(text, at, out var rune);
        length = isRune ? rune.Utf16SequenceLength : 1;
        return isRune && Rune.IsLetter(rune);
    }

    private static bool IsDigitOrMark(string text, int at, out int length)
    {
        var isRune = Rune.TryGetRuneAt(text, at, out var rune);
        length = isRune ? rune.Utf16SequenceLength : 1;
        return isRune && Rune.GetUnicodeCategory(rune)
            is UnicodeCategory.DecimalDigitNumber or UnicodeCategory.NonSpacingMark or UnicodeCategory.SpacingCombiningMark;
    }
}
