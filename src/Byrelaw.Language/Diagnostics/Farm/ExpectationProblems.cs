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

    public static Diagnostic Dropped(SourceSpan at, string name, SourceSpan first) => Problem.Error(
        "B0726", at, $"{Quoted.Of(name)} says what true records look like ({Quoted.Place(first)})", "an expectation cannot be dropped",
        "waive it for single animals, or take the promises out that it is about");

    public static Diagnostic AsksNoMore(SourceSpan at, string name, string? before, SourceSpan first) => Problem.Error(
        "B0727", at, $"this expects no more than {Quoted.Of(name)} does: {Quoted.Of(before ?? "")} ({Quoted.Place(first)})", "a change of an expectation adds to it, and both are tried",
        "expect more, or take the change out: what was expected is expected in any case");

    public static Diagnostic LineOfARule(SourceSpan at, string name) => Problem.Error(
        "B0728", at, $"{Quoted.Of(name)} says what true records look like", "this line belongs to a rule or a preference",
        "a change of it starts its lines with `every`, `at least` or `else`");

    public static Diagnostic LineOfAnExpectation(SourceSpan at, string name) => Problem.Error(
        "B0729", at, $"{Quoted.Of(name)} is a rule or a preference", "this line belongs to an expectation", "what a rule demands starts with `needs`");
}
