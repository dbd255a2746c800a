namespace Byrelaw.Language.Spellings;

/// <summary>
/// Reads what people type in the place of the one form, where it has one meaning everywhere. It is done with tokens, once names are
/// known and before any grammar: a declared name that holds such a word wins, and all that follows knows the one form only.
/// </summary>
internal static class OneForm
{
    // In this order: what is said by one may be looked for by a later one.
    private static readonly ImmutableArray<(Phrasing Typed, Phrasing Form)> All =
    [
        .. Ways("in the # T before", "within # T before"),
        .. Ways("in the last # T", "within the last # T", "within the past # T", "within last # T", "in the past # T", "in last # T", "in past # T", "within # T"),
        .. Ways("more than #", "over #", "above #"),
        .. Ways("less than #", "under #", "below #", "fewer than #"),
        .. Ways("at most #", "no more than #", "not more than #"),
        .. Ways("at least #", "no less than #", "no fewer than #", "not less than #", "not fewer than #"),
        .. Ways("age more than # T", "age older than # T", "^ older than # T"),
        .. Ways("age less than # T", "age younger than # T", "^ younger than # T"),
        .. Ways("D #", "is D #"),
        .. Ways("between # and #", "between # to #", "is between # to #", "is between # and #", "^ # to #"),
        .. Ways("between # T and # T", "between # T to # T", "is between # T to # T", "is between # T and # T"),
        .. Ways("N between # and #", "N # to #"),
        .. Ways("N between # T and # T", "N # T to # T"),
        .. Ways("age D # T", "^ D # T old", "age D # T old"),
        .. Ways("age between # and # T", "^ between # and # T old", "age between # and # T old"),
        .. Ways("age between # T and # T", "^ between # T and # T old", "age between # T and # T old"),
    ];

    /// <summary>The line with every such phrase in its one form.</summary>
    /// <param name="line">With names of several words as one token.</param>
    /// <param name="start">Where its condition starts.</param>
    /// <param name="phrases">The declared names.</param>
    public static LogicalLine Of(LogicalLine line, int start, PhraseBook phrases)
    {
        var tokens = line.Tokens.ToList();
        SpelledNumbers.Read(tokens, start, phrases);
        foreach (var (typed, form) in All)
        {
            for (var at = start; at < tokens.Count; at++)
            {
                if (typed.At(tokens, start, at, phrases) is { } match)
                {
                    var said = form.FilledFrom(match, tokens);
                    tokens.RemoveRange(at, match.Count);
                    tokens.InsertRange(at, said);
                    at += said.Count - 1;
                }
            }
        }

        return tokens.SequenceEqual(line.Tokens) ? line : new LogicalLine([.. tokens]);
    }

    private static IEnumerable<(Phrasing Typed, Phrasing Form)> Ways(string form, params string[] typed) =>
        typed.Select(way => (new Phrasing(way), new Phrasing(form)));
}
