namespace Byrelaw.Workshop.Editing.Outlines;

/// <summary>Cuts a file into its blocks, readable or not.</summary>
internal static class Outline
{
    /// <summary>The blocks in order; lines above the first head belong to none.</summary>
    public static IReadOnlyList<OutlineItem> Of(IReadOnlyList<LogicalLine> lines, PhraseBook phrases)
    {
        var items = new List<OutlineItem>();
        foreach (var line in lines)
        {
            if (LineTable.StartsBlock(line, items.Count > 0 ? LineTable.Heads[items[^1].Head].Kind : null))
            {
                items.Add(Start(line.IsBad ? line : phrases.Fuse(line, 1)));
            }
            else if (items.Count > 0)
            {
                items[^1] = items[^1] with { Span = items[^1].Span.To(line.Span) };
            }
        }

        return items;
    }

    private static OutlineItem Start(LogicalLine line)
    {
        var name = Array.Find(line.Tokens[1..], token => token.IsNamePart && !(token.Is("rule") || token.Is("for")));
        return new OutlineItem(line.WordAt(0), name?.Text ?? "", name?.Span ?? line.Tokens[0].Span, line.Span);
    }
}
