using Byrelaw.Language.Sources;

namespace Byrelaw.Language.Lexing;

/// <summary>Splits a file's tokens into statements.</summary>
internal static class LineSplitter
{
    /// <summary>
    /// A line that starts with a text belongs to the statement before it where that ends with a
    /// text, or where that is bad anyway. Empty lines and comments between do not part them.
    /// </summary>
    public static List<LogicalLine> Split(LexedFile file)
    {
        var lines = new List<LogicalLine>();
        var current = new List<Token>();
        var startsLine = true;
        foreach (var token in file.Tokens)
        {
            if (token.Kind is TokenKind.EndOfLine or TokenKind.EndOfFile)
            {
                startsLine = true;
                continue;
            }

            var runsOn = token.Kind == TokenKind.Text && current.Count > 0
                && (current[^1].Kind == TokenKind.Text || current.Exists(other => other.Kind == TokenKind.Bad));
            if (startsLine && current.Count > 0 && !runsOn)
            {
                lines.Add(new LogicalLine([.. current]));
                current.Clear();
            }

            startsLine = false;
            if (runsOn && current[^1].Kind == TokenKind.Text)
            {
                current[^1] = Join(current[^1], token);
            }
            else
            {
                current.Add(token);
            }
        }

        if (current.Count > 0)
        {
            lines.Add(new LogicalLine([.. current]));
        }

        return lines;
    }

    /// <summary>One space, however many people leave at the end of the first or the start of the second.</summary>
    private static Token Join(Token first, Token second) =>
        first with { Span = first.Span.To(second.Span), Text = $"{first.Text.TrimEnd(' ')} {second.Text.TrimStart(' ')}" };
}
