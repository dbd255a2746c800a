namespace Byrelaw.Language.Blocks;

/// <summary>
/// Finds what stands twice in a row. Once declared names are single tokens (<c>no bull in in the last 30 days</c> is right),
/// no line has a use for the second.
/// </summary>
internal static class Repeated
{
    /// <summary>The second of two equal words, numbers or commas; null where there is none.</summary>
    public static Token? In(ReadOnlySpan<Token> tokens)
    {
        for (var i = 1; i < tokens.Length; i++)
        {
            if (tokens[i].Repeats(tokens[i - 1]))
            {
                return tokens[i];
            }
        }

        return null;
    }
}
