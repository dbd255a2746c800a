namespace Byrelaw.Language.Spellings;

/// <summary>Conditions that are joined by <c>and</c>, <c>or</c> or a comma on one line, as the list that they are meant to be.</summary>
internal static class JoinedConditions
{
    /// <summary>The problem with the list to write, a line for each condition.</summary>
    /// <param name="problem">That they are joined.</param>
    /// <param name="line">The line.</param>
    /// <param name="joint">The token that joins the first two.</param>
    /// <param name="list"><c>all of</c> or <c>any of</c>.</param>
    public static Diagnostic AsList(this Diagnostic problem, LogicalLine line, Token joint, string list)
    {
        var tokens = line.Tokens;
        var start = line.WordAt(0) is "needs" or "suits" ? 1 : 0;
        var parts = new List<string>();
        var from = start;
        for (var at = start; at <= tokens.Length; at++)
        {
            if (at < tokens.Length && !Joins(tokens, at, joint))
            {
                continue;
            }

            if (at == from)
            {
                return problem;
            }

            parts.Add(tokens[from].Span.To(tokens[at - 1].Span).Text);
            from = at + 1;
        }

        if (tokens[0].Kind == TokenKind.Bullet || parts.Count < 2)
        {
            return problem;
        }

        var indent = "\n" + new string(' ', tokens[0].Span.Column + 1) + "- ";
        var lead = start == 0 ? "" : tokens[0].Text + " ";
        return (problem with { Lines = $"{lead}{list}\n  - {string.Join("\n  - ", parts)}" })
            .Or(new Proposal(line.Span, $"{lead}{list}{indent}{string.Join(indent, parts)}"));
    }

    /// <summary>The joint itself, and each like it that joins nothing else.</summary>
    private static bool Joins(Token[] tokens, int at, Token joint) => ReferenceEquals(tokens[at], joint)
        || (tokens[at].Kind == joint.Kind && tokens[at].Folded == joint.Folded && at > 0 && at + 1 < tokens.Length
            && (tokens[at].Is("and") ? !tokens[Math.Max(0, at - 3)..at].Any(token => token.Is("between")) : StartsCondition(tokens[at + 1]) || EndsCondition(tokens, at)));

    private static bool StartsCondition(Token token) => LanguageWords.Has(token.Folded, WordRole.StartsCondition);

    /// <summary>Whether the word before a place is no name, so that <c>or</c> there cannot join kinds.</summary>
    private static bool EndsCondition(Token[] tokens, int at) =>
        !tokens[at - 1].IsNamePart || (at > 1 && tokens[at - 2].Kind == TokenKind.Number && TimeUnitWords.Find(tokens[at - 1].Folded) is not null);
}
