namespace Byrelaw.Language.PhraseBooks;

/// <summary>Where what a detail looks like starts, and so the detail's name before it ends: <c>with sire is text</c>.</summary>
internal static class DetailTypes
{
    /// <summary>Whether a type starts at a place.</summary>
    public static bool StartsAt(LogicalLine line, int at) => (line.WordAt(at), line.WordAt(at + 1)) switch
    {
        ("is", "one" or "number" or "date" or "text" or "identity") => true,
        ("on", "scale") => true,
        ("in", not "the") => at + 1 < line.Tokens.Length,
        _ => false,
    };

    /// <summary>Whether a name and then a type stand from a place on: a name may hold the word <c>with</c> otherwise.</summary>
    public static bool Follows(LogicalLine line, int at)
    {
        for (var next = at + 1; next < line.Tokens.Length && line.Tokens[next].Kind != TokenKind.Comma && line.WordAt(next) != "with"; next++)
        {
            if (StartsAt(line, next))
            {
                return true;
            }
        }

        return false;
    }
}
