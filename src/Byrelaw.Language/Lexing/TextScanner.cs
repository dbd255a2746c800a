namespace Byrelaw.Language.Lexing;

/// <summary>Reads a text in straight quotes, on one line, with <c>\"</c> and <c>\\</c>.</summary>
internal static class TextScanner
{
    /// <summary>Reads from the opening quote.</summary>
    public static Token Read(SourceFile file, int start)
    {
        var text = file.Text;
        var value = new StringBuilder();
        Diagnostic? problem = null;
        var at = start + 1;
        for (; at < text.Length && text[at] is not ('\n' or '\r'); at++)
        {
            var c = text[at];
            if (c == '"')
            {
                var whole = new SourceSpan(file, start, at + 1 - start);
                return problem is null
                    ? new Token(TokenKind.Text, whole) { Text = ComposedText.Of(value.ToString()) }
                    : new Token(TokenKind.Bad, whole) { Problem = problem };
            }

            if (c == '\\' && at + 1 < text.Length && text[at + 1] is '"' or '\\')
            {
                at++;
                value.Append(text[at]);
            }
            else if (c == '\\')
            {
                problem ??= TextProblems.UnknownEscape(new SourceSpan(file, at, at + 1 < text.Length && text[at + 1] is not ('\n' or '\r') ? 2 : 1));
                value.Append(c);
            }
            else if (UnseenSigns.IsOne(c))
            {
                problem ??= TextProblems.UnseenSign(new SourceSpan(file, at, 1));
            }
            else
            {
                value.Append(c);
            }
        }

        var rest = new SourceSpan(file, start, at - start);
        return new Token(TokenKind.Bad, rest) { Problem = TextProblems.UnclosedText(rest) };
    }
}
