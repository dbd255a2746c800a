namespace Byrelaw.Checking.Examples;

/// <summary>Says what came out where something else was expected.</summary>
internal static class ExampleFailure
{
    /// <summary>The problem, at the place of the expectation.</summary>
    public static Diagnostic Of(Expectation expected, ToldAnswer outcome) => Problem.Error(
        "B1020", expected.Span, $"{Quoted.Of(expected.Name)} came out {Quoted.Of(Words(outcome, expected))}", $"the example expects {Quoted.Of(Words(expected))}");

    private static string Words(Expectation expected) => Joined(
        ExpectedAnswerWords.Of(expected.Answer),
        expected.From is { } from ? $"from {Iso(from)}" : "",
        expected.Until is { } until ? $"until {Iso(until)}" : "",
        expected.NotBefore is { } day ? $"not before {Iso(day)}" : "",
        expected.BecauseOf.IsEmpty ? "" : $"because of {And(expected.BecauseOf)}",
        expected.Missing.IsEmpty ? "" : $"missing {And(expected.Missing)}");

    /// <summary>The outcome, as far as something of the kind is expected. Of another answer it is not said what it lacks.</summary>
    private static string Words(ToldAnswer outcome, Expectation expected)
    {
        var isAnother = outcome.Answer != ExpectedAnswerWords.Of(expected.Answer);
        return Joined(
            outcome.Answer,
            expected.From is null ? "" : outcome.From is { } from ? $"from {Iso(from)}" : Lacking("from no day on"),
            expected.Until is null ? "" : outcome.Until is { } until ? $"until {Iso(until)}" : Lacking("for at least a year"),
            expected.NotBefore is null ? "" : outcome.NotBefore is { } day ? $"not before {Iso(day)}" : Lacking("at once"),
            expected.BecauseOf.IsEmpty ? "" : outcome.BecauseOf.IsEmpty ? Lacking("because of nothing on record") : $"because of {And(outcome.BecauseOf)}",
            expected.Missing.IsEmpty ? "" : outcome.Missing.IsEmpty ? Lacking("missing nothing") : $"missing {And(outcome.Missing)}");

        string Lacking(string words) => isAnother ? "" : words;
    }

    private static string Joined(params string[] parts) => string.Join(", ", parts.Where(part => part.Length > 0));

    private static string And(IEnumerable<string> names) => string.Join(" and ", names);

    private static string Iso(LocalDate date) => LocalDatePattern.Iso.Format(date);
}
