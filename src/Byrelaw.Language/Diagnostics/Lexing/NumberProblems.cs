using System.Text.RegularExpressions;

namespace Byrelaw.Language.Diagnostics;

/// <summary>What can be wrong with numbers.</summary>
internal static partial class NumberProblems
{
    public static Diagnostic RunTogether(SourceSpan at, string number) => Problem.Error(
        "B0111", at, $"{Quoted.Of(at)} is neither a number nor a word", "a number stands apart from its unit, and a name starts with a letter",
        $"write `{number} {at.Text[number.Length..]}`; an animal's number or a name stands in quotes: `\"{at.Text}\"`")
        .Or(new Proposal(at, $"{number} {at.Text[number.Length..]}")).Or(new Proposal(at, $"\"{at.Text}\""));

    public static Diagnostic Unreadable(SourceSpan at) => Problem.Error(
        "B0112", at, $"{Quoted.Of(at)} is not a number", "numbers look like `56`, `4.5` or `-1`", Meant(at.Text))
        .OrAny(Ways(at.Text).Select(way => new Proposal(at, way)));

    public static Diagnostic TooLong(SourceSpan at) => Problem.Error(
        "B0113", at, $"{Quoted.Of(at)} has too many digits", "at most 15");

    private static IEnumerable<string> Ways(string text) =>
        Thousands().IsMatch(text) ? [text.Replace(",", "", StringComparison.Ordinal)]
        : DecimalComma().IsMatch(text) ? [text.Replace(',', '.'), text.Replace(",", ", ", StringComparison.Ordinal)]
        : Range().Match(text) is { Success: true } range ? [$"between {range.Groups[1]} and {range.Groups[2]}"]
        : [];

    private static string? Meant(string text) =>
        Thousands().IsMatch(text) ? $"write it without commas: `{text.Replace(",", "", StringComparison.Ordinal)}`"
        : DecimalComma().IsMatch(text) ? $"write the decimal point as a point: `{text.Replace(',', '.')}`; two numbers stand apart: `{text.Replace(",", ", ", StringComparison.Ordinal)}`"
        : Range().Match(text) is { Success: true } range ? $"for a range write `between {range.Groups[1]} and {range.Groups[2]}`"
        : null;

    [GeneratedRegex("^-?[0-9]{1,3}(,[0-9]{3})+$")]
    private static partial Regex Thousands();

    [GeneratedRegex("^-?[0-9]+,[0-9]+$")]
    private static partial Regex DecimalComma();

    [GeneratedRegex(@"^([0-9]+(?:\.[0-9]+)?)[-–]([0-9]+(?:\.[0-9]+)?)$")]
    private static partial Regex Range();
}
