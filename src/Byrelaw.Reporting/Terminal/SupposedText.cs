namespace Byrelaw.Reporting.Terminal;

/// <summary>What is supposed, above an answer that rests on it: it is never mixed with what is on record.</summary>
public static class SupposedText
{
    /// <summary>The sentence; empty where nothing is supposed.</summary>
    /// <param name="lines">As they were written.</param>
    /// <param name="ink">How text is set off.</param>
    public static string Of(IReadOnlyCollection<string> lines, Ink ink)
    {
        ArgumentNullException.ThrowIfNull(lines);
        return lines.Count == 0 ? "" : new DocumentBuilder()
            .Sentence(Wording.Bold($"If this stood in the book: {Phrases.And([.. lines.Select(line => $"“{line.Trim()}”")])}."))
            .Sentence("It is not on record. Nobody is treated on what is only supposed.").Gap().OnTerminal(ink);
    }
}
