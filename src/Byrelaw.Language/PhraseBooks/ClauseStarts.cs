namespace Byrelaw.Language.PhraseBooks;

/// <summary>Where in a declaration a clause starts, and so the name before it ends.</summary>
internal static class ClauseStarts
{
    /// <summary>Whether a clause (or a comma) starts at a place of a line that declares an event, measure, test or fact.</summary>
    public static bool At(LogicalLine line, int at, string head)
    {
        if (at >= line.Tokens.Length || line.Tokens[at].Kind == TokenKind.Comma)
        {
            return true;
        }

        var next = line.WordAt(at + 1);
        return line.WordAt(at) switch
        {
            "also" => true,
            "answers" => head == "test",
            "in" => next == "the" ? line.WordAt(at + 2) == "yards" : head is "measure" or "fact" && IsUnitClause(line, at),
            "on" => next == "scale",
            "is" => head == "fact" && next is "one" or "number" or "date" or "text" or "identity" or "",
            "joins" or "leaves" => head == "event" && next == "the",
            "not" => head == "event" && next == "before",
            "of" => head == "event" && next == "embryos",
            "marks" => head == "event" && at + 1 < line.Tokens.Length && line.Tokens[at + 1].Kind == TokenKind.Word,
            "molar" => next == "mass",
            "with" => head is not ("fact" or "call") && DetailTypes.Follows(line, at + 1),
            "blank" => next == "is",
            "plausible" => at + 1 < line.Tokens.Length && line.Tokens[at + 1].Kind == TokenKind.Number,
            _ => line.Tokens[at].Kind == TokenKind.Number,
        };
    }

    /// <summary><c>in kg</c>: one word that may be a unit, and then the line's end or another clause.</summary>
    private static bool IsUnitClause(LogicalLine line, int at)
    {
        var tokens = line.Tokens;
        var isUnit = at + 1 < tokens.Length && (tokens[at + 1].Kind == TokenKind.Unit || tokens[at + 1].IsNamePart);
        return isUnit && (at + 2 >= tokens.Length || tokens[at + 2].Kind == TokenKind.Comma || line.WordAt(at + 2) is "also" or "molar" or "in" or "on" or "with" or "plausible");
    }
}
