namespace Byrelaw.Language.Diagnostics;

/// <summary>Worked examples that cannot be tried.</summary>
internal static class ExampleProblems
{
    public static Diagnostic NameTaken(SourceSpan at, string name, SourceSpan first) => Problem.Error(
        "B1001", at, $"there is an example {Quoted.Of(name)} already", $"it stands in line {first.Line}", "give one of them another name");

    public static Diagnostic NoAnimal(SourceSpan at) => Problem.Error(
        "B1002", at, "this example has no animal", "expected a line such as `cow born 2021-08-10` or `heifer born 2024-08-01`");

    public static Diagnostic NotJudged(SourceSpan at) => Problem.Error(
        "B1003", at, "this example does not say on which day she is judged", "expected a line such as `judged on 2026-10-19`");

    public static Diagnostic ExpectsNothing(SourceSpan at) => Problem.Error(
        "B1004", at, "this example expects nothing", "expected a line such as `expect \"Eight weeks calved\" not met`");

    public static Diagnostic NotAnAnswerOf(SourceSpan at, ExpectedAnswer answer, ExpectationOf of) => Problem.Error(
        "B1005", at, $"`{ExpectedAnswerWords.Of(answer)}` is not an answer of {Sort(of)}",
        $"it is {Quoted.Either([.. ExpectedAnswerWords.That(of).Select(ExpectedAnswerWords.Of)])}",
        Same(answer, of) is { } same ? $"did you mean {Quoted.Of(same)}?" : null)
        .OrAny(Instead(at, Same(answer, of)));

    public static Diagnostic ClauseHasNoPlace(SourceSpan at, string words, ExpectationOf of) => Problem.Error(
        "B1006", at, $"`{words}` says nothing of {Sort(of)}", "only a list has a day before which nobody is asked about",
        "what can be said of it: `from` and `until` with a day, `because of` with kinds, facts or defined conditions, and `missing`")
        .Or(new Proposal(at, "until" + at.Text[words.Length..]));

    public static Diagnostic NotBeforeOfAnother(SourceSpan at, SourceSpan answerAt, ExpectedAnswer answer) => Problem.Error(
        "B1023", at, $"`not before` says nothing of `{ExpectedAnswerWords.Of(answer)}`", "it goes with `later`: until then she is not asked about",
        answer == ExpectedAnswer.Ask ? "did you mean `later`?" : null)
        .OrAny(Instead(answerAt, answer == ExpectedAnswer.Ask ? "later" : null));

    public static Diagnostic ClauseTwice(SourceSpan at, string words) => Problem.Error("B1007", at, $"`{words}` stands twice", "once is enough");

    public static Diagnostic NoSuchRule(SourceSpan at, string name, (string Name, SourceSpan Span)? near) => Problem.Error(
        "B1008", at, $"no rule and no preference is called {Quoted.Of(name)}", "expected one of this file or a file that it uses",
        near is var (spelling, place) ? $"did you mean {Quoted.Of(spelling)} ({Quoted.Place(place)})?" : null)
        .OrAny(Instead(at, near is null ? null : $"\"{near.Value.Name}\""));

    public static Diagnostic NoSuchTarget(SourceSpan at, string name, Symbol? other, string? near) => Problem.Error(
        "B1009", at, other is null ? $"{Quoted.Of(name)} is neither a list nor a defined condition" : $"{Quoted.Of(name)} is {other.Sort}",
        "expected a list, a defined condition, or a rule in quotes", near is null ? null : $"did you mean {Quoted.Of(near)}?")
        .OrAny(Instead(at, near));

    public static Diagnostic BeforeBirth(SourceSpan at, LocalDate born) => Problem.Error(
        "B1010", at, $"this is before she was born on {Iso(born)}", "expected that day or a later one");

    public static Diagnostic AfterRecords(SourceSpan at, LocalDate last, bool isSaid) => Problem.Error(
        "B1011", at, $"this is after {Iso(last)}, the day the records reach", "expected that day or an earlier one",
        isSaid ? null : "they reach the judged day; if they reach further, say so: `records to DATE`");

    public static Diagnostic JudgedBackwards(SourceSpan first, SourceSpan last) => Problem.Error(
        "B1012", first.To(last), "the last judged day is before the first", "expected the earlier day first")
        .Or(new Proposal(first.To(last), $"{last.Text} to {first.Text}"));

    public static Diagnostic CowWithoutCalving(SourceSpan at) => Problem.Error(
        "B1013", at, "a cow has calved, and nothing here says so", "expected a line such as `calving 2026-09-07` or `parity 3`",
        "if it does not matter what she is, write `female`");

    public static Diagnostic HeiferHasCalved(SourceSpan at, SourceSpan animal) => Problem.Error(
        "B1014", at, "a heifer has not calved", "here it is said that she has", "write `cow`, or take this line away")
        .Or(new Proposal(animal with { Length = "heifer".Length }, "cow"));

    public static Diagnostic NoMob(SourceSpan at) => Problem.Error(
        "B1015", at, "nothing says which mob she is in", "expected a line such as `mob Back since 2025-06-01`");

    public static Diagnostic NotARank(SourceSpan rank, SourceSpan of, int most) => Problem.Error(
        "B1016", rank.To(of), $"{Quoted.Of(rank.To(of))} is no place in a herd", $"expected whole numbers, the place no greater than the herd, and at most {most} animals")
        .Or(new Proposal(rank.To(of), $"{of.Text} of {rank.Text}"));

    public static Diagnostic NotACount(SourceSpan at, int most) => Problem.Error(
        "B1017", at, $"{Quoted.Of(at)} is not a number of animals", $"expected a whole number from 1 to {most}");

    public static Diagnostic RecordHasNoDay(SourceSpan at, string name) => Problem.Error(
        "B1018", at, $"nothing says when {Quoted.Of(name)} was", "expected its day, such as `2026-09-07`, right after it");

    public static Diagnostic ValueNotTaken(SourceSpan at, string name, string sort) => Problem.Error(
        "B1019", at, $"{Quoted.Of(name)} is {sort}", "it takes nothing more");

    public static Diagnostic NoValue(SourceSpan at, string name) => Problem.Error(
        "B1021", at, $"nothing says what {Quoted.Of(name)} is", "expected its value right after it", "what is not on record is left out of the example");

    /// <summary>The answer that says yes, or no, of one thing as the other says it of another.</summary>
    private static string? Same(ExpectedAnswer answer, ExpectationOf of) => answer switch
    {
        ExpectedAnswer.Met or ExpectedAnswer.True or ExpectedAnswer.Ready => ExpectedAnswerWords.Of(ExpectedAnswerWords.That(of)[0]),
        ExpectedAnswer.NotMet or ExpectedAnswer.False or ExpectedAnswer.No when of != ExpectationOf.List => ExpectedAnswerWords.Of(ExpectedAnswerWords.That(of)[1]),
        _ => null,
    };

    private static IEnumerable<Proposal> Instead(SourceSpan at, string? meant) => meant is null ? [] : [new Proposal(at, meant)];

    private static string Sort(ExpectationOf of) => of switch
    {
        ExpectationOf.Rule => "a rule",
        ExpectationOf.Prefer => "a preference",
        ExpectationOf.Define => "a defined condition",
        _ => "a list",
    };

    private static string Iso(LocalDate date) => LocalDatePattern.Iso.Format(date);
}
