using System.Text;
using Byrelaw.Language.Sources;

namespace Byrelaw.Language.Diagnostics;

/// <summary>Signs that rule files do not use.</summary>
internal static class SignProblems
{
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
        });

    public static Diagnostic Bracket(SourceSpan at) => Problem.Error(
        "B0132", at, $"{Quoted.Of(at)} is not used in rules", "there are no brackets", "give the inner condition a name with `define` and use the name");

    public static Diagnostic OtherBullet(SourceSpan at) => Problem.Error(
        "B0133", at, $"{Quoted.Of(at)} starts this line", "the lines of a list start with `- `", "write a hyphen and a space");

    public static Diagnostic SingleQuote(SourceSpan at) => Problem.Error(
        "B0134", at, $"{Quoted.Of(at)} stands apart from a word", "texts stand in straight double quotes", "write a double quote: `\"`");

    public static Diagnostic LoneCarriageReturn(SourceSpan at) => Problem.Error(
        "B0135", at, "a line ends the way very old computers ended lines", "lines end with LF or CRLF", "save the file anew with such line ends");

    public static Diagnostic LonePercent(SourceSpan at) => Problem.Error(
        "B0136", at, "`%` stands apart from its number", "a per cent is written `20%`", "leave out the space");

    public static Diagnostic Stray(SourceSpan at, Rune sign) => Problem.Error(
        "B0137", at,
        Rune.IsControl(sign) || Rune.GetUnicodeCategory(sign) is System.Globalization.UnicodeCategory.Format
            ? $"an invisible character (U+{sign.Value:X4}) stands here" : $"{Quoted.Of(at)} is not used in rules",
        null, "delete it, or put the name or text that holds it in quotes");
}
