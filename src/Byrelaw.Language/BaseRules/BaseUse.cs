namespace Byrelaw.Language.BaseRules;

/// <summary>A line <c>use base recipients edition 1</c>, found in its tokens before any grammar reads it.</summary>
/// <param name="Name">The file, by words with spaces between.</param>
/// <param name="At">Where the name stands.</param>
/// <param name="Edition">The edition; null where the line does not say, or says no whole number.</param>
/// <param name="EditionAt">Where the edition stands, or would.</param>
internal sealed record BaseUse(string Name, SourceSpan At, int? Edition, SourceSpan EditionAt)
{
    /// <summary>What a line says; null for another line.</summary>
    public static BaseUse? Of(LogicalLine line)
    {
        if (line.WordAt(0) != "use" || line.WordAt(1) != "base" || line.Tokens.Length < 3)
        {
            return null;
        }

        var words = line.Tokens.Skip(2).TakeWhile(token => token.Kind is TokenKind.Word or TokenKind.Phrase && !token.Is("edition")).ToList();
        if (words.Count == 0)
        {
            return null;
        }

        var (name, at) = (string.Join(' ', words.Select(word => word.Folded)), words[0].Span.To(words[^1].Span));
        return line.Tokens.Skip(2 + words.Count).ToList() switch
        {
            [] => new BaseUse(name, at, null, new SourceSpan(at.File, at.End, 0)),
            [var edition, { Kind: TokenKind.Number } number] when edition.Is("edition") => new BaseUse(
                name, at, number.Number == Math.Truncate(number.Number) && number.Number is >= 1 and < 1000 ? (int)number.Number : null, number.Span),
            _ => null,
        };
    }

    /// <summary>Whether the line says an edition, be it one that cannot be.</summary>
    public bool SaysEdition => EditionAt.Length > 0;
}
