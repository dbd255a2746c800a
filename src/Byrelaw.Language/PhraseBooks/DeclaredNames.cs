namespace Byrelaw.Language.PhraseBooks;

/// <summary>
/// Finds the names that a line declares, before anything is parsed. A declared name may hold
/// reserved words (<c>bull in</c>): it goes from a free word to where something else can only start.
/// </summary>
internal static class DeclaredNames
{
    /// <summary>The names that a line declares, in order; none for a line that declares nothing.</summary>
    public static List<NameRange> In(LogicalLine line)
    {
        var ranges = new List<NameRange>();
        var tokens = line.Tokens;
        switch (line.WordAt(0))
        {
            case "event" or "measure" or "test" or "fact" or "call":
                WithClauses(line, ranges);
                break;
            case "add" when line.WordAt(1) != "to":
                Values(line, ranges);
                break;
            case "add":
                Details(line, "add", Find(line, 2, at => line.WordAt(at) == "with"), ranges);
                break;
            case "spell":
                Add(line, 1, Find(line, 2, at => line.WordAt(at) == "from"), ranges);
                break;
            case "define":
                Add(line, 1, tokens.Length, ranges);
                break;
            case "date":
                Add(line, 1, Find(line, 2, at => IsDay(line, at)), ranges);
                break;
            default:
                break;
        }

        return ranges;
    }

    /// <summary><c>on 2026-10-26</c> or <c>8 days before</c>: where the name of a date ends.</summary>
    private static bool IsDay(LogicalLine line, int at) =>
        (line.WordAt(at) == "on" && (at + 1 == line.Tokens.Length || line.Tokens[at + 1].Kind is TokenKind.Date or TokenKind.Bad))
        || line.Tokens[at].Kind == TokenKind.Number;

    /// <summary>Values before <c>to</c> and a fact, separated by commas.</summary>
    private static void Values(LogicalLine line, List<NameRange> ranges)
    {
        for (var at = 0; at < line.Tokens.Length && (at == 0 || line.Tokens[at].Kind == TokenKind.Comma);)
        {
            var start = at + 1;
            at = Find(line, start + 1, next => line.Tokens[next].Kind == TokenKind.Comma || line.WordAt(next) == "to");
            Add(line, start, at, ranges);
        }
    }

    private static void WithClauses(LogicalLine line, List<NameRange> ranges)
    {
        var head = line.WordAt(0);
        var end = Find(line, 2, at => ClauseStarts.At(line, at, head));
        Add(line, 1, end, ranges);
        Details(line, head, end, ranges);
    }

    /// <summary>The names in the clauses of a declaration.</summary>
    private static void Details(LogicalLine line, string head, int from, List<NameRange> ranges)
    {
        for (var at = from; at < line.Tokens.Length; at++)
        {
            if (line.WordAt(at) == "with" && ClauseStarts.At(line, at, head))
            {
                var type = Find(line, at + 2, next => DetailTypes.StartsAt(line, next));
                Add(line, at + 1, type, ranges);
                at = type - 1;
            }
            else if (line.WordAt(at) == "is" && line.WordAt(at - 1) == "blank")
            {
                var end = Find(line, at + 2, next => ClauseStarts.At(line, next, head));
                Add(line, at + 1, end, ranges);
                at = end - 1;
            }

            // Names after `also`, `answers` and `one of` are separated by commas.
            else if (line.WordAt(at) is "also" or "answers" || (line.WordAt(at) == "of" && line.WordAt(at - 1) == "one"))
            {
                do
                {
                    var start = at + 1;
                    at = Find(line, start + 1, next => ClauseStarts.At(line, next, head));
                    Add(line, start, at, ranges);
                }
                while (at < line.Tokens.Length && line.Tokens[at].Kind == TokenKind.Comma && !ClauseStarts.At(line, at + 1, head));

                at--;
            }
        }
    }

    private static int Find(LogicalLine line, int from, Predicate<int> ends)
    {
        var at = Math.Min(from, line.Tokens.Length);
        while (at < line.Tokens.Length && !ends(at))
        {
            at++;
        }

        return at;
    }

    private static void Add(LogicalLine line, int start, int end, List<NameRange> ranges)
    {
        var isText = end == start + 1 && line.Tokens[start].Kind == TokenKind.Text;
        if (isText || (start < end && line.Tokens[start].IsNamePart && Array.TrueForAll(line.Tokens[start..end], token => token.Kind == TokenKind.Word)))
        {
            ranges.Add(new NameRange(start, end - start));
        }
    }
}
