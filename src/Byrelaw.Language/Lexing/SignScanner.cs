namespace Byrelaw.Language.Lexing;

/// <summary>Reads what rule files do not use: operators, brackets, curly quotes, stray characters.</summary>
internal static class SignScanner
{
    private const string OperatorSigns = "<>=!&|≥≤≠";

    /// <summary>Reads one sign, or a run of operator signs.</summary>
    public static Token Read(SourceFile file, int start, bool startsLine)
    {
        var text = file.Text;
        var c = text[start];
        if (c is '\u201C' or '\u201D' or '\u201E' or '\u201F' or '\u00AB' or '\u00BB')
        {
            return CurlyText(file, start);
        }

        if (OperatorSigns.Contains(c, StringComparison.Ordinal))
        {
            var end = start + 1;
            while (end < text.Length && OperatorSigns.Contains(text[end], StringComparison.Ordinal))
            {
                end++;
            }

            var run = new SourceSpan(file, start, end - start);
            return Bad(run, SignProblems.Operator(run));
        }

        var isRune = Rune.TryGetRuneAt(text, start, out var rune);
        var span = new SourceSpan(file, start, isRune ? rune.Utf16SequenceLength : 1);
        return Bad(span, c switch
        {
            '(' or ')' or '[' or ']' or '{' or '}' => SignProblems.Bracket(span),
            '-' or '*' or '•' or '·' or '–' or '—' when startsLine => SignProblems.OtherBullet(span),
            '\'' or '\u2018' or '\u2019' or '`' => SignProblems.SingleQuote(span),
            '\r' => SignProblems.LoneCarriageReturn(span),
            '%' => SignProblems.LonePercent(span),
            _ => SignProblems.Stray(span, isRune ? rune : Rune.ReplacementChar),
        });
    }

    /// <summary>A text between curly quotes is one wrong thing, not as many as it has words.</summary>
    private static Token CurlyText(SourceFile file, int start)
    {
        var text = file.Text;
        var end = start + 1;
        while (end < text.Length && text[end] is not ('\n' or '\r' or '\u201C' or '\u201D' or '"' or '\u00BB' or '\u00AB'))
        {
            end++;
        }

        end = end < text.Length && text[end] is not ('\n' or '\r') ? end + 1 : end;
        var span = new SourceSpan(file, start, end - start);
        return Bad(span, TextProblems.CurlyQuotes(span));
    }

    private static Token Bad(SourceSpan span, Diagnostic problem) => new(TokenKind.Bad, span) { Problem = problem };
}
