namespace Byrelaw.Language.Spellings;

/// <summary>
/// What people type that could mean two things, or that means another thing than it says. It is refused. The line that was most likely meant is
/// shown to its last word where that can be known; where it cannot, what each line would mean, and none of them is offered.
/// </summary>
internal static class UnclearForms
{
    private const string DryCow = "counts nothing once she is dried off; what is meant is the time since she calved";

    private static readonly Phrasing AtMost = new("at most # T since *");

    private static readonly ImmutableArray<Unclear> All =
    [
        .. Ways("at least # T since *", "does not say whether at least or at most", "^ # T since *").Select(way => way with { Other = AtMost }),
        .. Ways("N exactly #", "does not say how the two are compared", "^ N # $"),
        .. Ways("in the # T after last *", "does not say which side, nor of which one", "within # T of last *", "within # T of *").Select(way => way with { IsOneSideOnly = true }),
        .. Ways("in the # T after last *", "does not say after which one", "within # T after last *", "within # T since last *", "within # T after *", "within # T since *"),
        .. Ways("at least 1 N *", "does not say how many", "^ a N *", "^ an N *", "^ any N *"),
        .. Ways("D # days since last calving *", DryCow, "^ D # days in milk *", "^ days in milk D # *"),
        .. Ways("D # days since last calving", DryCow, "^ D # days in milk $", "^ days in milk D # $"),
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
        foreach (var unclear in All)
        {
            for (var at = start; at < tokens.Length; at++)
            {
                if (unclear.Typed.At(tokens, start, at, phrases) is { } match)
                {
                    var typed = unclear.Typed.WithoutRest(match, tokens);
                    return unclear switch
                    {
                        { IsOneSideOnly: true } => ConditionProblems.OneSideOnly(typed, unclear.Why, Mended(unclear.Form)),
                        // What a rule needs is most likely the longer time. Below `none of`, or as a name for others to use, it may as well be the shorter.
                        { Other: { } other } when line.WordAt(0) != "needs" => ConditionProblems.EitherOf(typed, unclear.Why, Mended(unclear.Form), Mended(other)),
                        _ => ConditionProblems.Unclear(typed, unclear.Why, tokens[start].Span.To(tokens[^1].Span), Mended(unclear.Form)),
                    };

                    string Mended(Phrasing form) => Text(tokens[start..at].Concat(form.FilledFrom(match, tokens)).Concat(tokens[(at + match.Count)..]));
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

    private static IEnumerable<Unclear> Ways(string form, string why, params string[] typed) => typed.Select(way => new Unclear(new Phrasing(way), new Phrasing(form), why));

    /// <summary>A way to say something that could mean two things.</summary>
    /// <param name="Typed">The way.</param>
    /// <param name="Form">The one form of what was most likely meant.</param>
    /// <param name="Why">Why it is not read.</param>
    private sealed record Unclear(Phrasing Typed, Phrasing Form, string Why)
    {
        /// <summary>The form of what it may mean as well; null where nothing else is likely.</summary>
        public Phrasing? Other { get; init; }

        /// <summary>Whether the form says half of what may be meant, and nothing says the other half.</summary>
        public bool IsOneSideOnly { get; init; }
    }
}
