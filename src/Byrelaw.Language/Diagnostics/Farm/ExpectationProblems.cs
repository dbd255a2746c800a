namespace Byrelaw.Language.Diagnostics;

/// <summary>What can be wrong with an expectation about the records.</summary>
internal static class ExpectationProblems
{
    public static Diagnostic Twice(SourceSpan at, string name, SourceSpan first) => Problem.Error(
        "B0821", at, $"a second expectation is called {Quoted.Of(name)}", $"each has a name of its own ({Quoted.Place(first)})");

    public static Diagnostic ExpectsNothing(SourceSpan at) => Problem.Error(
        "B0822", at, "this expectation does not say what is expected", "expected a line that starts `every` or `at least`",
        "such as `every calving comes 200 to 320 days after mating`, or `at least 1 lameness a year for every 20 cows`");

    public static Diagnostic NoElse(SourceSpan at) => Problem.Error(
        "B0823", at, "this expectation does not say which promises fall", "expected a line that starts `else`",
        "such as `else mating is not complete, over 2%`, or `else calving is not complete for her`");

    public static Diagnostic HowMany(SourceSpan at) => Problem.Error(
        "B0824", at, "this does not say how many entries must fail", "expected `, over` and a per cent, or `for her`");

    public static Diagnostic RateOfHerd(SourceSpan at) => Problem.Error(
        "B0825", at, "so many a year are expected of the herd, not of one animal or of a share of the entries", "expected `is not complete` and nothing more");

    public static Diagnostic RateOfNothing(SourceSpan at) => Problem.Error(
        "B0826", at, "this expects nothing", "expected numbers above 0");
}
