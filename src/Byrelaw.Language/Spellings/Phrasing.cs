namespace Byrelaw.Language.Spellings;

/// <summary>
/// A way to say something, with places left open: <c>#</c> a number, <c>T</c> a unit of time, <c>D</c> a demand such as <c>at least</c>, <c>*</c> all
/// that is left of the line (at least a word). <c>^</c> is the start of the condition, <c>$</c> the end of the line, <c>N</c> a part of a name.
/// Its first word may not be a name that is declared: then that is what stands there.
/// </summary>
/// <param name="text">Words and places, one space between.</param>
internal sealed class Phrasing(string text)
{
    private readonly ImmutableArray<string> _parts = [.. text.Split(' ')];
    private readonly string? _firstWord = text.Split(' ').FirstOrDefault(part => char.IsLower(part[0]));

    /// <summary>The tokens that it takes at a place; null where it does not stand there.</summary>
    public PhrasingMatch? At(IReadOnlyList<Token> tokens, int start, int at, PhraseBook phrases)
    {
        var match = new PhrasingMatch(at);
        foreach (var part in _parts)
        {
            var count = part switch
            {
                "^" => at == start ? 0 : -1,
                "$" => at == tokens.Count ? 0 : -1,
                "*" => at < tokens.Count ? tokens.Count - at : -1,
                _ when at >= tokens.Count => -1,
                "#" => tokens[at].Kind == TokenKind.Number ? 1 : -1,
                "T" => tokens[at].Kind == TokenKind.Word && TimeUnitWords.Find(tokens[at].Folded) is not null ? 1 : -1,
                "N" => tokens[at].IsNamePart ? 1 : -1,
                "D" => DemandAt(tokens, at),
                _ => tokens[at].Is(part) && !(part == _firstWord && phrases.IsName(part)) ? 1 : -1,
            };
            if (count < 0)
            {
                return null;
            }

            if (count > 0)
            {
                match.Take(part, [.. tokens.Skip(at).Take(count)]);
                at += count;
            }
        }

        return match with { Count = at - match.Start };
    }

    /// <summary>What is said this way with the open places filled from another way to say it.</summary>
    public List<Token> FilledFrom(PhrasingMatch match, IReadOnlyList<Token> tokens)
    {
        var filled = new List<Token>();
        var next = 0;
        foreach (var part in _parts)
        {
            if (IsOpen(part))
            {
                filled.AddRange(match.Open[next++]);
            }
            else
            {
                filled.Add(new Token(TokenKind.Word, match.SpanOfWords(next, tokens)) { Text = part, Folded = part });
            }
        }

        return filled;
    }

    /// <summary>Where it stands, but for the rest of the line that it leaves as it is.</summary>
    public SourceSpan WithoutRest(PhrasingMatch match, IReadOnlyList<Token> tokens)
    {
        var count = _parts[^1] == "*" ? match.Count - match.Open[^1].Length : match.Count;
        return tokens[match.Start].Span.To(tokens[match.Start + count - 1].Span);
    }

    /// <summary>Whether a part is a place that is left open.</summary>
    public static bool IsOpen(string part) => part is "#" or "T" or "D" or "N" or "*";

    private static int DemandAt(IReadOnlyList<Token> tokens, int at)
    {
        var second = at + 1 < tokens.Count ? tokens[at + 1] : null;
        return tokens[at].Is("exactly") ? 1
            : tokens[at].Is("at") && second is not null && (second.Is("least") || second.Is("most")) ? 2
            : (tokens[at].Is("more") || tokens[at].Is("less")) && second?.Is("than") == true ? 2
            : -1;
    }
}

/// <summary>Where a phrasing stands in a line.</summary>
/// <param name="Start">Its first token.</param>
internal sealed record PhrasingMatch(int Start)
{
    private readonly List<SourceSpan?> _words = [null];

    /// <summary>How many tokens it takes.</summary>
    public int Count { get; init; }

    /// <summary>What stands in its open places, in order.</summary>
    public List<ImmutableArray<Token>> Open { get; } = [];

    public void Take(string part, ImmutableArray<Token> taken)
    {
        if (Phrasing.IsOpen(part))
        {
            Open.Add(taken);
            _words.Add(null);
        }
        else
        {
            _words[^1] = _words[^1] is { } words ? words.To(taken[0].Span) : taken[0].Span;
        }
    }

    /// <summary>Where words stand that are said in the place of those after so many open places: of no length where none stood there.</summary>
    public SourceSpan SpanOfWords(int afterOpen, IReadOnlyList<Token> tokens) =>
        afterOpen < _words.Count && _words[afterOpen] is { } words ? words
        : afterOpen == 0 ? tokens[Start].Span with { Length = 0 }
        : Open[afterOpen - 1][^1].Span is var last ? last with { Start = last.End, Length = 0 } : default;
}
