namespace Byrelaw.Workshop.Editing.Suggestions;

/// <summary>What may stand after <c>with</c>: the details of the kind before it, and their values.</summary>
internal static class DetailSuggestions
{
    /// <summary>Each with a word on what it is.</summary>
    public static IEnumerable<(string Text, string Detail)> Of(Wanted wanted, NotedLine? line, Namespace names)
    {
        if (line is null)
        {
            return [];
        }

        var tokens = line.Line.Tokens;
        var with = Array.FindLastIndex(tokens, token => token.Is("with"));
        if (with < 0 || KindBefore(line, tokens[with].Span.Start, names) is not { } kind)
        {
            return [];
        }

        return wanted.Label == NameLabels.Detail
            ? kind.Details.Select(detail => (detail.Name, $"a detail of {kind.Name}"))
            : kind.Details.Where(detail => with + 1 < tokens.Length && NameFolding.Fold(detail.Name) == NameFolding.Fold(tokens[with + 1].Text))
                .SelectMany(detail => detail.Values.Select(value => (value, $"of {detail.Name}")));
    }

    private static Kind? KindBefore(NotedLine line, int before, Namespace names) =>
        LineNames.In(line, names).Where(use => use.Span.Start < before).Select(use => names.Find(use.Spelling)).OfType<KindSymbol>().LastOrDefault()?.Kind;
}
