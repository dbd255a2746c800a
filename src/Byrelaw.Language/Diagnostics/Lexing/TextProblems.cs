namespace Byrelaw.Language.Diagnostics;

/// <summary>What can be wrong with texts and words.</summary>
internal static class TextProblems
{
    public static Diagnostic UnclosedText(SourceSpan at) => Problem.Error(
        "B0101", at, "this text has no closing quote", "a text ends with `\"` on the line on which it starts",
        at.Text.AsSpan().IndexOfAny('\u201C', '\u201D') >= 0
            ? "a curly quote does not close it: write a straight `\"`"
            : "put a `\"` at its end; a long text goes on in a further pair of quotes on the next line")
        .OrAny(Closed(at));

    public static Diagnostic CurlyQuotes(SourceSpan at) => Problem.Error(
        "B0102", at, $"{Quoted.Of(at)} stands in curly quotes", "texts stand in straight quotes",
        $"write `\"{WithoutQuotes(at.Text)}\"`").Or(new Proposal(at, $"\"{WithoutQuotes(at.Text)}\""));

    public static Diagnostic UnknownEscape(SourceSpan at) => Problem.Error(
        "B0103", at, $"{Quoted.Of(at)} means nothing inside a text", @"only `\""` and `\\` do",
        @"for the sign `\` itself write `\\`").Or(new Proposal(at with { Length = 1 }, @"\\"));

    public static Diagnostic UnseenSign(SourceSpan at) => Problem.Error(
        "B0104", at, $"an invisible {(UnseenSigns.TurnsDirection(at.Text[0]) ? "mark" : "control character")} (U+{(int)at.Text[0]:X4}) stands inside this text", null, "delete it")
        .Or(new Proposal(at, ""));

    public static Diagnostic MixedScripts(SourceSpan at) => Problem.Error(
        "B0105", at, $"the letters of {Quoted.Of(at)} come from more than one script", "a word keeps to one",
        $"some letters look alike in several scripts: type {Quoted.Of(LookAlikes.InLatin(at.Text))} anew").Or(new Proposal(at, LookAlikes.InLatin(at.Text)));

    public static Diagnostic LineTooLong(SourceSpan at, int most) => Problem.Error(
        "B0107", at, "this line goes on too long", $"a line has at most {most} words", "give parts of it names with `define`, or put them on lines that start with `- `");

    public static Diagnostic LineStartsWithText(SourceSpan at) => Problem.Error(
        "B0106", at, "this line starts with a text", "a text goes on from the line before only where that ends with a text",
        "say what it is: `because \"...\"` or `source \"...\"`")
        .Or(Proposal.Before(at, "because ")).Or(Proposal.Before(at, "source "));

    public static Diagnostic TextTwice(SourceSpan at) => Problem.Error(
        "B0108", at, "this text stands twice in a row", "once is enough", "leave it out here")
        .Or(Proposal.WithSpaceBefore(at));

    private static string WithoutQuotes(string text) => text.Trim('\u201C', '\u201D', '\u201E', '\u201F', '\u00AB', '\u00BB', '"');

    /// <summary>Where the closing quote may have been meant: in a curly one's place, before a word that goes on with the line, at the end.</summary>
    private static IEnumerable<Proposal> Closed(SourceSpan at)
    {
        var text = at.Text.TrimEnd();
        var curly = text.IndexOfAny(['\u201C', '\u201D'], 1);
        if (curly > 0)
        {
            yield return new Proposal(at with { Start = at.Start + curly, Length = 1 }, "\"");
        }

        yield return Proposal.After(at with { Length = text.Length }, "\"");
        foreach (var next in (string[])[",", " on ", " for "])
        {
            var end = text.LastIndexOf(next, StringComparison.Ordinal);
            if (end > 1)
            {
                yield return Proposal.After(at with { Length = end }, "\"");
            }
        }
    }
}
