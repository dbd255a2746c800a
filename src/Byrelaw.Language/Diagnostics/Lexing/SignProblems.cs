using System.Buffers;

namespace Byrelaw.Language.Diagnostics;

/// <summary>Signs that rule files do not use.</summary>
internal static class SignProblems
{
    private static readonly SearchValues<char> Brackets = SearchValues.Create("()[]{}");

    public static Diagnostic Operator(SourceSpan at) => Problem.Error(
        "B0131", at, $"{Quoted.Of(at)} is not used in rules", "rules are written in words", at.Text switch
        {
            ">=" or "=>" or "≥" => "write `at least`",
            "<=" or "=<" or "≤" => "write `at most`",
            ">" => "write `more than`",
            "<" => "write `less than`",
            "=" or "==" => "write `exactly` for a number, `is` for a word",
            "!=" or "<>" or "≠" or "!" => "write `is not`",
            "&" or "&&" => "write `all of` and give each condition a line that starts with `- `",
            "|" or "||" => "write `or` between kinds; for conditions write `any of` and give each a line that starts with `- `",
            _ => null,
        }).OrAny(InWords(at.Text).Select(words => new Proposal(at, Spaced(at, words))));

    public static Diagnostic Bracket(SourceSpan at) => Problem.Error(
        "B0132", at, $"{Quoted.Of(at)} is not used in rules", "there are no brackets", "give the inner condition a name with `define` and use the name")
        .OrAny(WithoutBrackets(at));

    public static Diagnostic OtherBullet(SourceSpan at) => Problem.Error(
        "B0133", at, $"{Quoted.Of(at)} starts this line", "the lines of a list start with `- `", "write a hyphen and a space")
        .Or(new Proposal(at, at.End < at.File.Text.Length && at.File.Text[at.End] == ' ' ? "-" : "- "));

    public static Diagnostic SingleQuote(SourceSpan at) => Problem.Error(
        "B0134", at, $"{Quoted.Of(at)} stands apart from a word", "texts stand in straight double quotes", "write a double quote: `\"`")
        .OrAny(DoubleQuoted(at));

    public static Diagnostic LoneCarriageReturn(SourceSpan at) => Problem.Error(
        "B0135", at, "a line ends the way very old computers ended lines", "lines end with LF or CRLF", "save the file anew with such line ends");

    public static Diagnostic LonePercent(SourceSpan at) => Problem.Error(
        "B0136", at, "`%` stands apart from its number", "a per cent is written `20%`", "leave out the space")
        .Or(Proposal.WithSpaceBefore(at) with { Text = "%" });

    public static Diagnostic Stray(SourceSpan at, Rune sign) => Problem.Error(
        "B0137", at,
        Rune.IsControl(sign) || Rune.GetUnicodeCategory(sign) is System.Globalization.UnicodeCategory.Format
            ? $"an invisible character (U+{sign.Value:X4}) stands here" : $"{Quoted.Of(at)} is not used in rules",
        null, "delete it, or put the name or text that holds it in quotes").Or(new Proposal(at, "")).Or(new Proposal(at, " "));

    private static IEnumerable<string> InWords(string sign) => sign switch
    {
        ">=" or "=>" or "≥" => ["at least"],
        "<=" or "=<" or "≤" => ["at most"],
        ">" => ["more than"],
        "<" => ["less than"],
        "=" or "==" => ["exactly", "is"],
        "!=" or "<>" or "≠" or "!" => ["is not"],
        "|" or "||" => ["or"],
        _ => [],
    };

    private static string Spaced(SourceSpan at, string words)
    {
        var text = at.File.Text;
        var before = at.Start > 0 && text[at.Start - 1] != ' ' ? " " : "";
        return before + words + (at.End < text.Length && text[at.End] != ' ' ? " " : "");
    }

    /// <summary>The line from its first bracket to its last, without any.</summary>
    private static IEnumerable<Proposal> WithoutBrackets(SourceSpan at)
    {
        var line = at.File.Line(at.Line);
        var (first, last) = (line.AsSpan().IndexOfAny(Brackets), line.AsSpan().LastIndexOfAny(Brackets));
        var within = new SourceSpan(at.File, at.File.StartOf(at.Line) + first, last + 1 - first);
        yield return new Proposal(within, string.Concat(within.Text.Where(c => !Brackets.Contains(c))));
    }

    /// <summary>From one single quote to the next, in double quotes.</summary>
    private static IEnumerable<Proposal> DoubleQuoted(SourceSpan at)
    {
        var rest = at.File.Line(at.Line)[at.Column..];
        var end = rest.IndexOfAny(['\'', '\u2019', '`']);
        if (end >= 0)
        {
            yield return new Proposal(at with { Length = end + 2 }, $"\"{rest[..end]}\"");
        }
    }
}
