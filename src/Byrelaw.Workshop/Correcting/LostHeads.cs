namespace Byrelaw.Workshop.Correcting;

/// <summary>
/// Finds where a line has lost its first word and shrank to a text, which then ran on from the text above it: what follows
/// seems to say things twice.
/// </summary>
internal static class LostHeads
{
    private const int MostLinesUp = 6;

    private static readonly string[] Heads =
        [.. new[] { "rule", "safety rule", "prefer", "source" }.Concat(LineTable.Heads.Keys.Order(StringComparer.Ordinal)).Distinct()];

    /// <summary>The words that may be missing before each such text above a statement, the nearest first.</summary>
    public static IEnumerable<Proposal> Above(TypedStatement statement)
    {
        var source = statement.File.Source;
        var last = source.LineAt(statement.Line.Span.Start) - 1;
        for (var line = last; line > 1 && line > last - MostLinesUp; line--)
        {
            var text = source.Line(line);
            var quote = text.Length - text.TrimStart().Length;
            if (quote < text.Length && text[quote] == '"')
            {
                var at = new SourceSpan(source, source.StartOf(line) + quote, 0);
                foreach (var head in Heads)
                {
                    yield return Proposal.Before(at, head + " ");
                }
            }
        }
    }
}
