namespace Byrelaw.Language.Diagnostics;

/// <summary>Conditions whose parts do not fit together.</summary>
internal static class ConditionProblems
{
    private const string ByWhichTest = "does not say by which test, nor since when";

    public static Diagnostic CountWithoutWindow(SourceSpan at) => Problem.Error(
        "B0301", at, "this count says nothing about when", "a count has a window",
        "add `in the last 30 days`, `since last calving` or, for her whole life, `ever`");

    public static Diagnostic LookupWithoutWindow(SourceSpan at, string name) => Problem.Warning(
        "B0302", at, $"a result of {Quoted.Of(name)} of any age counts here", null,
        "add a window such as `in the last 60 days`, or `ever` if any age will do");

    public static Diagnostic TooManyWindows(SourceSpan at) => Problem.Error(
        "B0303", at, "this is a third window", "a condition has at most two");

    public static Diagnostic NoDemand(SourceSpan at, string name, string wanted) => Problem.Error(
        "B0304", at, $"nothing is demanded of {Quoted.Of(name)}", $"expected {wanted}");

    public static Diagnostic NoPlaceHere(SourceSpan at, string name) => Problem.Error(
        "B0305", at, $"{Quoted.Of(at)} has no place in a condition on {Quoted.Of(name)}");

    public static Diagnostic SecondDemand(SourceSpan at) => Problem.Error(
        "B0306", at, $"{Quoted.Of(at)} is a second demand", "a condition makes one", "use `all of` and give each a line that starts with `- `");

    public static Diagnostic MobWithoutAnimals(SourceSpan at, bool saysNone = false) => Problem.Error(
        "B0318", at, saysNone ? "of no animal's result anything is true" : "nothing says how many of the mob must have results",
        saysNone ? "expected 1 animal or more" : "expected `from at least N animals`", "say how many must have been sampled, such as `, from at least 5 animals`, and agree the number with the vet");

    public static Diagnostic NotOverAMob(SourceSpan at, string how) => Problem.Error(
        "B0319", at, $"{Quoted.Of(how)} is not asked of a mob", "a mob has an `average`, a `lowest` and a `highest`");

    public static Diagnostic BelowNought(SourceSpan at, bool isLoss) => Problem.Error(
        "B0337", at, isLoss ? "a loss counts upwards" : "a gain counts upwards", "a number that is not below nought",
        isLoss ? "less than nothing lost is something gained: say `gained`, and turn `at most` and `at least` round" : "less than nothing gained is something lost: say `lost`, and turn `at most` and `at least` round");

    public static Diagnostic OneResult(SourceSpan at, string name, int results) => Problem.Error(
        "B0338", at, results == 0 ? "of no result anything is true" : "of one result there is no series", "expected two results or more",
        results == 0 ? null : $"for the last one write `latest {name} in the last 90 days`, with the days that you mean: without them a result of any age counts");

    public static Diagnostic OfEmbryos(SourceSpan at, string name) => Problem.Error(
        "B0345", at, $"{Quoted.Of(name)} happens to embryos, and a rule asks about an animal", "expected something that happens to animals");

    public static Diagnostic ApartOfOthers(SourceSpan at) => Problem.Error(
        "B0342", at, $"{Quoted.Of(at)} does not go with `apart`", "expected `at least 2` to `at least 9`: only of two or more can one say how far apart they are");

    public static Diagnostic ApartOtherwise(SourceSpan at) => Problem.Error(
        "B0343", at, $"{Quoted.Of(at)} is not read", "expected `at least`, `at most` or `between`",
        "such as `between 18 and 24 days apart`; for the same number to the day write it twice, `between 21 and 21 days apart`");

    public static Diagnostic Unclear(SourceSpan at, string why, SourceSpan condition, string mended) => Unclear(at, why, $"write `{mended}`")
        .Or(new Proposal(condition, mended)) with
    { IsHelpTried = true };

    public static Diagnostic EitherOf(SourceSpan at, string why, string one, string other) => Unclear(at, why, $"write `{one}` or `{other}`");

    public static Diagnostic OneSideOnly(SourceSpan at, string why, string after) =>
        Unclear(at, why, $"for the days after it write `{after}`; the days before it cannot be asked in the same line");

    public static Diagnostic AnswerAlone(SourceSpan at, string mended) => Unclear(at, ByWhichTest, at, mended);

    public static Diagnostic AnswerOfSeveral(SourceSpan at, string answer, IReadOnlyList<string> tests) => Unclear(at, ByWhichTest,
        $"{Quoted.Of(answer)} is an answer of {Phrases.FirstOf(tests, 3)}: write `latest`, the test, a window such as `in the last 60 days`, and `{(at.Text.StartsWith("not ", StringComparison.OrdinalIgnoreCase) ? "is not" : "is")} {answer}`");

    /// <summary>That she is not in calf is no answer of one test: one that was taken before her last service says nothing.</summary>
    public static Diagnostic NotInCalfAlone(SourceSpan at) => Unclear(at, ByWhichTest,
        "that she is not in calf takes more than an answer: use the rule `Not in calf` of the base rules, or for one late scan write `latest pregnancy test with method not hand from 28 days after last mating or transfer is empty`");

    private static Diagnostic Unclear(SourceSpan at, string why, string help) => Problem.Error("B0339", at, $"{Quoted.Of(at)} {why}", null, help);

    public static Diagnostic NotEither(SourceSpan at, string name, IReadOnlyList<string> values)
    {
        var neither = $"{name} is not one of {string.Join(", ", values)}";
        return Problem.Error(
            "B0340", at, $"{Quoted.Of(at)} may mean neither of them, or not both", null, $"for neither write `{neither}`")
            .Or(new Proposal(at, neither)) with
        { IsHelpTried = true };
    }

    public static Diagnostic CountNeedsAnswer(SourceSpan at, string test, ImmutableArray<string> answers) => Problem.Error(
        "B0320", at, $"{Quoted.Of(test)} is a test", "a count counts one of its answers",
        answers.IsEmpty ? null : $"write which answer is counted: {Phrases.Or([.. answers.Take(3).Select(answer => Quoted.Of($"{answer} {test}"))])}; that she was tested at all cannot be asked yet");

    public static Diagnostic NotBeforeThis(SourceSpan at, string sort) => Problem.Error(
        "B0321", at, $"`not` stands before {sort}", "it stands only before a defined name, a spell, or `in the top`",
        "for a value write `is not`; for a count write `no`")
        .OrAny(WithoutNot(at));

    public static Diagnostic TopOutOfRange(SourceSpan at) => Problem.Error(
        "B0322", at, $"there is no top {Quoted.Of(at)}", "expected a per cent above 0 and at most 100");

    public static Diagnostic ListInList(SourceSpan at) => Problem.Error(
        "B0324", at, "a list stands inside a list", "lists are one level deep", "give the inner list a name with `define` and use the name");

    public static Diagnostic CountBeyondList(SourceSpan at, int items) => Problem.Error(
        "B0325", at, $"{Quoted.Of(at)} can never be asked of this list", $"it has {items} {(items == 1 ? "line" : "lines")} that start with `- `");

    /// <summary>`no` for a count; `is not` for a value.</summary>
    private static IEnumerable<Proposal> WithoutNot(SourceSpan at)
    {
        var line = at.File.Line(at.Line);
        var not = line[..(at.Column - 1)].LastIndexOf("not ", StringComparison.OrdinalIgnoreCase);
        if (not < 0)
        {
            yield break;
        }

        var start = at.File.StartOf(at.Line) + not;
        yield return new Proposal(at with { Start = start, Length = 3 }, "no");
        var rest = line[(not + 4)..].Split('#')[0].TrimEnd();
        yield return new Proposal(at with { Start = start, Length = 4 + rest.Length }, rest.Replace(" is ", " is not ", StringComparison.OrdinalIgnoreCase));
    }

    public static Diagnostic EmptyList(SourceSpan at) => Problem.Error(
        "B0326", at, "this list is empty", "each of its conditions stands on a line that starts with `- `");

    public static Diagnostic ListDemand(SourceSpan at) => Problem.Error(
        "B0327", at, $"{Quoted.Of(at)} does not start a list", "lists are `any of`, `all of`, `none of` and `at least N of`");
}
