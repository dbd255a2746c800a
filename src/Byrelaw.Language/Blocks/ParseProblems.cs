using Pidgin;

namespace Byrelaw.Language.Blocks;

/// <summary>Turns a failed parse into words: first for the mistakes that people make often, else what was expected.</summary>
internal static class ParseProblems
{
    private const int MostExpected = 6;

    /// <summary>What is wrong with a line.</summary>
    public static Diagnostic Of(LogicalLine line, ParseError<Token> error)
    {
        var at = Math.Clamp(error.ErrorOffset, 0, line.Tokens.Length);
        var found = at < line.Tokens.Length ? line.Tokens[at] : null;
        return Habit(line, at, found) ?? LineProblems.Unexpected(
            found?.Span ?? new SourceSpan(line.Span.File, line.Span.End, 0), found?.Kind, Expected(error));
    }

    /// <summary>Habits from spoken and other written languages.</summary>
    private static Diagnostic? Habit(LogicalLine line, int at, Token? found)
    {
        if (found is null)
        {
            return null;
        }

        var before = at > 0 ? line.Tokens[at - 1] : null;
        return found switch
        {
            _ when found.Is("and") && before?.Is("between") != true => LineProblems.AndJoinsNothing(found.Span).AsList(line, found, "all of"),
            _ when found.Is("or") => LineProblems.OrJoinsKinds(found.Span).AsList(line, found, "any of"),
            _ when before is not null && before.Is("or") && LanguageWords.Has(found.Folded, WordRole.StartsCondition) => LineProblems.OrJoinsKinds(before.Span).AsList(line, before, "any of"),
            _ when before?.Kind == TokenKind.Comma && LanguageWords.Has(found.Folded, WordRole.StartsCondition) => LineProblems.CommaJoinsNothing(before.Span).AsList(line, before, "all of"),
            _ when found.Is("old") => LineProblems.DaysOld(found.Span),
            _ when at > 1 && line.WordAt(at - 1) == "of" && line.WordAt(at - 2) is "any" or "all" or "none" => LineProblems.ListOnOneLine(found.Span),
            { Kind: TokenKind.Number } when before is not null && before.Is("choose") || line.WordAt(0) == "choose" && found.Kind == TokenKind.Number
                => LineProblems.AnimalWithoutQuotes(found.Span),
            _ when at == 1 && LanguageWords.EndName(found.Folded) && line.WordAt(0) is "event" or "measure" or "test" or "fact" or "spell" or "define" or "date"
                => LineProblems.NameStartsWithReserved(found.Span),
            _ when IsNameWithoutQuotes(line, at) => LineProblems.RuleWithoutQuotes(line.Tokens[at].Span.To(line.Tokens[^1].Span)),
            _ => null,
        };
    }

    private static bool IsNameWithoutQuotes(LogicalLine line, int at) =>
        line.Tokens[at].Kind is TokenKind.Word or TokenKind.Phrase
        && (at == 1 && line.WordAt(0) is "rule" or "prefer" or "change" or "drop" or "waive" or "accept" or "programme" or "method" or "task" or "visits" or "because" or "source"
            || (at == 2 && line.WordAt(0) == "safety"));

    private static List<string> Expected(ParseError<Token> error)
    {
        var labels = new List<string>();
        foreach (var expected in error.Expected)
        {
            var label = expected.IsEof ? "the end of the line" : expected.Label ?? "";
            if (label.Length > 0 && !labels.Contains(label) && labels.Count < MostExpected)
            {
                labels.Add(label);
            }
        }

        return labels;
    }
}
