using Byrelaw.Language.Reading;

namespace Byrelaw.Checking.Examples;

/// <summary>Tries worked examples: each animal is made up, judged, and the answer held to what is expected.</summary>
public static class ExampleRunner
{
    /// <summary>Tries the examples of a file and of the files it uses, each against the file it stands in and what that one uses.</summary>
    /// <param name="reading">The file as read.</param>
    /// <param name="files">Where the others come from.</param>
    /// <param name="cancelled">Gives it up.</param>
    /// <returns>None for a file with errors: what is broken cannot be tried.</returns>
    /// <exception cref="OperationCanceledException">It was given up.</exception>
    public static ImmutableArray<ExampleOutcome> Run(RulebookReading reading, IRuleFiles files, CancellationToken cancelled = default)
    {
        ArgumentNullException.ThrowIfNull(reading);
        var used = reading.UsedWithExamples.Select(path => RulebookReader.Read(path, files)).OfType<RulebookReading>();
        return [.. used.Prepend(reading).Where(one => !one.HasErrors).SelectMany(one => Run(one.Rulebook, cancelled))];
    }

    /// <summary>Tries a rulebook's own examples.</summary>
    public static IEnumerable<ExampleOutcome> Run(Rulebook rulebook, CancellationToken cancelled = default)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        foreach (var example in rulebook.Examples)
        {
            cancelled.ThrowIfCancellationRequested();
            yield return Run(example, rulebook);
        }
    }

    private static ExampleOutcome Run(Example example, Rulebook rulebook)
    {
        var made = ExampleHerd.Of(example, rulebook);
        if (!made.Problems.IsEmpty)
        {
            return new ExampleOutcome(example, made.Problems, []);
        }

        var rules = rulebook.With(example.Dates) with { Waivers = [] };
        return new ExampleOutcome(example, [], [.. example.Expectations.Select(expectation => Try(expectation, example, rules, made))]);
    }

    private static ExpectationOutcome Try(Expectation expectation, Example example, Rulebook rulebook, ExampleHerd made)
    {
        var rules = Alone(expectation, rulebook);
        var list = expectation.Of == ExpectationOf.List ? expectation.Name : rules.Rules[0].List;
        var choice = new Choice(list, SortOf(list, rulebook), [], null, example.JudgedFrom, example.JudgedTo, example.Span)
        {
            Use = expectation.Of == ExpectationOf.List ? rulebook.Programme?.Choices.FirstOrDefault(choice => choice.List == list)?.Use ?? ListUse.HormoneOrEmbryo : ListUse.ForLookingOnly,
        };
        rules = rules with { Programme = new Programme(example.Name, DatesOf(example), [choice], example.Span) };
        var animal = new Judge(rules, made.Herd).JudgeOne(choice, made.Animal);
        var outcome = ToldAnswer.Of(expectation, animal, example.JudgedFrom);
        var judged = new ListJudgement(choice, [.. rules.BrokenParts.Where(part => part.List is null || part.List == list)], [animal], []);
        return new ExpectationOutcome(
            expectation, outcome.Fits(expectation) ? null : ExampleFailure.Of(expectation, outcome), new Draft(rules, made.Herd, null, [judged]));
    }

    /// <summary>The rulebook with nothing to ask but what is expected of.</summary>
    private static Rulebook Alone(Expectation expectation, Rulebook rulebook)
    {
        if (expectation.Of == ExpectationOf.List)
        {
            return rulebook;
        }

        var rule = expectation.Of switch
        {
            ExpectationOf.Rule => rulebook.Rules.First(rule => rule.Name == expectation.Name),
            ExpectationOf.Prefer => Asking(rulebook.Prefers.First(prefer => prefer.Name == expectation.Name)),
            _ => Asking(rulebook, expectation),
        };

        // A rule that waits for the person beside the animal is asked like any other here.
        return rulebook with { Rules = [rule with { OnTheDay = false }], Prefers = [], BrokenParts = [] };
    }

    private static Rule Asking(Prefer prefer) =>
        new() { Name = prefer.Name, List = prefer.List, Needs = prefer.Condition, IsBroken = prefer.IsBroken, Because = prefer.Because, Source = prefer.Source, Span = prefer.Span };

    private static Rule Asking(Rulebook rulebook, Expectation expectation)
    {
        for (var i = 0; i < rulebook.Defines.Length; i++)
        {
            if (rulebook.Defines[i] is var define && define.Name == expectation.Name)
            {
                return new Rule
                {
                    Name = define.Name,
                    List = "this example",
                    Needs = new NamedCondition(define.Name, i, false) { Span = define.Span },
                    IsBroken = define.IsBroken,
                    Span = define.Span,
                };
            }
        }

        throw new InvalidOperationException($"No defined condition is called {expectation.Name}, though it was bound.");
    }

    /// <summary>Whom the programme takes for the list; every female where it does not say.</summary>
    private static ChoiceFrom SortOf(string list, Rulebook rulebook) =>
        rulebook.Programme?.Choices.FirstOrDefault(choice => choice.List == list)?.From is (ChoiceFrom.Cows or ChoiceFrom.Heifers) and var from ? from : ChoiceFrom.Females;

    /// <summary>The example's dates, and the day of its first record, so that timelines reach back to it.</summary>
    private static ImmutableArray<ProgrammeDate> DatesOf(Example example) => example.Records.IsEmpty
        ? example.Dates
        : [new ProgrammeDate("first record", example.Records.Min(record => record.Date), example.Span), .. example.Dates];
}
