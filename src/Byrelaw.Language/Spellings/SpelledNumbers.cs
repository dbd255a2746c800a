namespace Byrelaw.Language.Spellings;

/// <summary>Numbers in words, <c>one</c> to <c>twelve</c>, where only a number can stand: <c>at least two heats</c>.</summary>
internal static class SpelledNumbers
{
    private static readonly ImmutableArray<string> Words = ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

    /// <summary>The tokens from a place on, such words among them as numbers.</summary>
    public static void Read(List<Token> tokens, int from, PhraseBook phrases)
    {
        for (var at = from; at < tokens.Count; at++)
        {
            if (ValueOf(tokens[at]) is > 0 and var value && !phrases.IsName(tokens[at].Folded) && MustBeNumber(tokens, at))
            {
                tokens[at] = tokens[at] with { Kind = TokenKind.Number, Number = value, Folded = "" };
            }
        }
    }

    private static int ValueOf(Token token) => token.Kind == TokenKind.Word ? Words.IndexOf(token.Folded) + 1 : 0;

    private static bool MustBeNumber(List<Token> tokens, int at)
    {
        var (before, after) = (at > 0 ? tokens[at - 1] : null, at + 1 < tokens.Count ? tokens[at + 1] : null);
        return before is { Kind: TokenKind.Word, Folded: "least" or "most" or "than" or "exactly" or "between" or "over" or "above" or "under" or "below" }
            || (before is { Kind: TokenKind.Word, Folded: "and" or "to" } && at > 1 && tokens.Take(at - 1).LastOrDefault(token => TimeUnitWords.Find(token.Folded) is null)?.Kind == TokenKind.Number)
            || (after is { Kind: TokenKind.Word } && (after.Is("results") || TimeUnitWords.Find(after.Folded) is not null))
            || (after?.Is("to") == true && at + 2 < tokens.Count && (tokens[at + 2].Kind == TokenKind.Number || ValueOf(tokens[at + 2]) > 0));
    }
}
