namespace Byrelaw.Language.Spellings;

/// <summary>
/// What people type that could mean two things, or that means another thing than it says. It is refused, and the line that was
/// most likely meant is shown to its last word.
/// </summary>
internal static class UnclearForms
{
    private static readonly ImmutableArray<(Phrasing Typed, Phrasing Form, string Why)> All =
    [
        .. Ways("at least # T since *", "does not say whether at least or at most", "^ # T since *"),
        .. Ways("N exactly #", "does not say how the two are compared", "^ N # $"),
        .. Ways("in the # T after last *", "does not say whether before or after, nor after which one", "within # T of last *", "within # T after last *", "within # T since last *"),
        .. Ways("in the # T after last *", "does not say whether before or after, nor after which one", "within # T of *", "within # T after *", "within # T since *"),
        .. Ways("at least 1 N *", "does not say how many", "^ a N *", "^ an N *", "^ any N *"),
        .. Ways("D # days since last calving *", "ends where she is dried off", "^ D # days in milk *", "^ days in milk D # *"),
        .. Ways("D # days since last calving", "ends where she is dried off", "^ D # days in milk $", "^ days in milk D # $"),
        .. Ways("dam is N", "does not say by which fact of hers", "^ daughter of N $"),
        .. Ways("sire is N", "does not say by which fact of hers", "^ by N $"),
    ];

    /// <summary>What is unclear in a line, and how to write it; null where nothing is.</summary>
    /// <param name="line">With names of several words as one token.</param>
    /// <param name="start">Where its condition starts.</param>
    /// <param name="phrases">The declared names.</param>
    public static Diagnostic? In(LogicalLine line, int start, PhraseBook phrases)
    {
        var tokens = line.Tokens;
        foreach (var (typed, form, why) in All)
        {
            for (var at = start; at < tokens.Length; at++)
            {
                if (typed.At(tokens, start, at, phrases) is { } match)
                {
                    var mended = Text(tokens[start..at].Concat(form.FilledFrom(match, tokens)).Concat(tokens[(at + match.Count)..]));
                    return ConditionProblems.Unclear(typed.WithoutRest(match, tokens), why, tokens[start].Span.To(tokens[^1].Span), mended);
                }
            }
        }

        return null;
    }

    private static string Text(IEnumerable<Token> tokens)
    {
        var text = new StringBuilder();
        foreach (var token in tokens)
        {
            text.Append(text.Length == 0 || token.Kind == TokenKind.Comma ? "" : " ").Append(token.Kind == TokenKind.Word ? token.Text : token.Span.Text);
        }

        return text.ToString();
    }

    private static IEnumerable<(Phrasing Typed, Phrasing Form, string Why)> Ways(string form, string why, params string[] typed) =>
        typed.Select(way => (new Phrasing(way), new Phrasing(form), why));
}
