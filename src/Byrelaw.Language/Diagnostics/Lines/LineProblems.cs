using System.Text.RegularExpressions;

namespace Byrelaw.Language.Diagnostics;

/// <summary>Lines that say nothing known, or stand in the wrong place.</summary>
internal static partial class LineProblems
{
    public static Diagnostic UnknownLine(LogicalLine line, BlockKind? block)
    {
        var first = line.Tokens[0].Span;
        var known = LineTable.Heads.Keys.Concat(block is { } kind ? LineTable.Bodies(kind).Keys : []);
        var near = NearestName.To(line.Tokens[0].Text, known);
        return Problem.Error(
            "B0401", first, $"no line starts with {Quoted.Of(first)}",
            block is { } inside && LineTable.HasBody(inside)
                ? $"expected a line of {BlockWords.Of(inside)}, or the start of something new"
                : "expected a line that starts something, such as `rule`, `define` or `event`",
            near is null ? null : $"did you mean `{near}`?")
            .OrAny(near is null ? [] : [new Proposal(first, near)]);
    }

    public static Diagnostic Unexpected(SourceSpan at, TokenKind? found, IReadOnlyList<string> expected) => Problem.Error(
        "B0402", at,
        found is null ? "the line ends too early" : $"{Quoted.Of(at)} is not understood here",
        expected.Count == 0 ? null : $"expected {Phrases.Or(expected)}");

    public static Diagnostic NoPlaceHere(SourceSpan at, BlockKind? block, IReadOnlyList<BlockKind> homes) => Problem.Error(
        "B0403", at, $"a line that starts with {Quoted.Of(at)} has no place {(block is { } kind ? "in " + BlockWords.Of(kind) : "here")}",
        $"it belongs in {Phrases.Or([.. homes.Select(BlockWords.Of)])}");

    public static Diagnostic Twice(SourceSpan at, string words, SourceSpan first) => Problem.Error(
        "B0404", at, $"`{words}` stands twice", $"once is enough: it stands in line {first.Line} already",
        words == "needs" ? "for several conditions write `needs all of` and give each a line that starts with `- `" : null);

    public static Diagnostic AndJoinsNothing(SourceSpan at) => Problem.Error(
        "B0405", at, "`and` does not join conditions", "it stands only in `between A and B`",
        "write `all of` and give each condition a line that starts with `- `");

    public static Diagnostic OrJoinsKinds(SourceSpan at) => Problem.Error(
        "B0406", at, "`or` does not join conditions", "it stands only between kinds, as in `no mastitis or metritis`",
        "write `any of` and give each condition a line that starts with `- `");

    public static Diagnostic DaysOld(SourceSpan at) => Problem.Error(
        "B0407", at, "`old` is not how an age is asked for", null, AsAge(at) is [var age, ..] ? $"write `{age.Text}`" : "write `age at least 13 months`")
        .OrAny(AsAge(at)).Or(Proposal.WithSpaceBefore(at));

    public static Diagnostic BulletWithoutList(SourceSpan at) => Problem.Error(
        "B0408", at, "this line of a list has no list above it", "`- ` stands under `any of`, `all of`, `none of` or `at least 2 of`");

    public static Diagnostic ListOnOneLine(SourceSpan at) => Problem.Error(
        "B0409", at, $"{Quoted.Of(at)} stands on the line that starts a list", "expected the end of the line",
        "give each condition a line of its own that starts with `- `");

    public static Diagnostic AnimalWithoutQuotes(SourceSpan at) => Problem.Error(
        "B0410", at, $"{Quoted.Of(at)} has no quotes", "animals are named by their number in quotes", $"write `\"{at.Text}\"`")
        .Or(new Proposal(at, $"\"{at.Text}\"")).Or(AllQuoted(at));

    public static Diagnostic RuleWithoutQuotes(SourceSpan at) => Problem.Error(
        "B0411", at, $"{Quoted.Of(at)} has no quotes", "expected a text in quotes", $"write `\"{at.Text}\"`")
        .Or(new Proposal(at, $"\"{at.Text}\""));

    public static Diagnostic CommaJoinsNothing(SourceSpan at) => Problem.Error(
        "B0412", at, "a comma does not join conditions", "a rule has one condition, or a list of them",
        "write `all of` and give each condition a line that starts with `- `");

    public static Diagnostic NameStartsWithReserved(SourceSpan at) => Problem.Error(
        "B0413", at, $"a name starts with {Quoted.Of(at)}", "that word has a meaning of its own", "put the whole name in quotes, here and wherever it is used");

    public static Diagnostic StandsTwice(SourceSpan at) => Problem.Error(
        "B0414", at, $"{Quoted.Of(at)} stands twice in a row", "once is enough", "leave it out here, or put a name that really repeats a word in quotes")
        .Or(Proposal.WithSpaceBefore(at));

    /// <summary>`at least 400 days old` as an age.</summary>
    private static ImmutableArray<Proposal> AsAge(SourceSpan old)
    {
        var before = old.File.Line(old.Line)[..(old.Column - 1)];
        if (Demand().Match(before) is not { Success: true } demand)
        {
            return [];
        }

        var start = old.File.StartOf(old.Line) + demand.Index;
        return [new Proposal(old with { Start = start, Length = old.End - start }, "age " + demand.Value.Trim())];
    }

    /// <summary>Every number of the line from here on, in quotes.</summary>
    private static Proposal AllQuoted(SourceSpan at)
    {
        var numbers = Numbers().Match(at.File.Line(at.Line)[(at.Column - 1)..]).Value;
        return new Proposal(at with { Length = numbers.Length }, string.Join(", ", numbers.Split(',').Select(number => $"\"{number.Trim().Trim('"')}\"")));
    }

    [GeneratedRegex("(?:at least|at most|more than|less than|exactly|between [0-9]+ and) [0-9]+ [a-z]+ *$", RegexOptions.IgnoreCase)]
    private static partial Regex Demand();

    [GeneratedRegex("^[0-9]+(?:, *\"?[0-9]+\"?)*")]
    private static partial Regex Numbers();
}
