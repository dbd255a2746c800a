namespace Byrelaw.Language.Spellings;

/// <summary><c>if X then Y</c> and <c>Y unless X</c> in a rule: they say whom the rule is for, which has lines of its own. They are refused, with the lines to write.</summary>
internal static class RuleForSome
{
    /// <summary>The problem with such a line; null for every other.</summary>
    /// <param name="line">With names of several words as one token.</param>
    /// <param name="rule">The rule that it stands in.</param>
    public static Diagnostic? In(LogicalLine line, Block rule)
    {
        var tokens = line.Tokens;
        var start = line.WordAt(0) == "needs" ? 1 : 0;
        var then = Array.FindIndex(tokens, token => token.Is("then"));
        if (line.WordAt(start) == "if" && then > start + 1 && then + 1 < tokens.Length)
        {
            return Problem(tokens[start], rule, line, $"  {Text(tokens[(start + 1)..then])}", Text(tokens[(then + 1)..]));
        }

        var unless = Array.FindIndex(tokens, start, token => token.Is("unless"));
        return unless < 0 || unless + 1 >= tokens.Length ? null
            : Problem(tokens[unless], rule, line, $"  none of\n    - {Text(tokens[(unless + 1)..])}", unless == start ? null : Text(tokens[start..unless]));
    }

    private static Diagnostic Problem(Token word, Block rule, LogicalLine line, string whom, string? needs)
    {
        var name = rule.Head is RuleLine { Name.Value: var called } ? Named($"meant for {called.ToLowerInvariant()}") : "";
        if (name.Length == 0 || rule.First<AppliesToLine>() is not null)
        {
            return RuleProblems.ForSome(word.Span, null);
        }

        var head = $"define {name}\n{whom}\n\n{rule.Span.Text}\n  applies to {name}";
        var last = needs is null ? "" : $"needs {needs}";
        var between = new SourceSpan(line.Span.File, rule.Span.End, line.Span.Start - rule.Span.End);
        return RuleProblems.ForSome(word.Span, needs is null ? head : $"{head}\n  {last}")
            .Or(new Proposal(rule.Span.To(line.Span), head + (needs is null ? between.Text.TrimEnd() : between.Text + last)));
    }

    /// <summary>A name that is declared may hold the language's own words without quotes, but nothing that is no word.</summary>
    private static string Named(string name) =>
        Lexer.Lex(new SourceFile("", name)).Tokens.All(token => token.Kind is TokenKind.Word or TokenKind.EndOfFile) ? name : NameText.Text(name);

    private static string Text(Token[] tokens) => tokens[0].Span.To(tokens[^1].Span).Text;
}
