namespace Byrelaw.Language.Canonical;

/// <summary>Expectations about the records, and for whom they are waived, the one way.</summary>
public static class ExpectationText
{
    /// <summary>The whole block.</summary>
    public static string Of(RecordExpectation expectation) => RuleText.Block(
        $"{(expectation.IsAdded ? "change" : expectation.IsSafety ? "safety expectation" : "expectation")} {NameText.Text(expectation.Name)}",
        [Expected(expectation), Otherwise(expectation), .. RuleText.Reasons(expectation.Because, expectation.Source, expectation.Agreement)]);

    /// <summary>What is expected, on one line; null where that cannot be read.</summary>
    public static string? Expected(RecordExpectation expectation) => expectation switch
    {
        { IsBroken: true } => null,
        EntryExpectation entries => $"every {Of(entries.Every)} comes {Between(entries)} {(entries.IsBefore ? "before" : "after")} {Others(entries)}",
        RateExpectation rate => $"at least {NumberText.Of(rate.Count)} {NameText.Exact(rate.Kind.Name)} a year for every {NumberText.Of(rate.Cows)} cows",
        _ => null,
    };

    /// <summary>A waiver's block.</summary>
    internal static string Of(ExpectationWaiver waiver) => RuleText.Block(
        $"waive {NameText.Text(waiver.Expectation)} for {NameText.Text(waiver.Animal)}",
        [waiver.Until is { } until ? $"until {NumberText.Of(until)}" : null, .. RuleText.Reasons(waiver.Because, null, waiver.Agreement)]);

    private static string? Otherwise(RecordExpectation expectation)
    {
        if (expectation.Else.IsEmpty)
        {
            return null;
        }

        var kinds = string.Join(", ", expectation.Else.Select(kind => NameText.Exact(kind.Name)));
        var measure = expectation switch
        {
            EntryExpectation { ForHer: true } => " for her",
            EntryExpectation entries => $", over {NumberText.Of(entries.OverPercent)}%",
            _ => "",
        };
        return $"else {kinds} {(expectation.Else.Length == 1 ? "is" : "are")} not complete{measure}";
    }

    private static string Between(EntryExpectation entries) => entries.From.Count == 0 ? $"at most {entries.To}" : $"{entries.From.Count} to {entries.To}";

    private static string Others(EntryExpectation entries) =>
        string.Join(" or ", entries.Others.Select(Of).Concat(entries.Spells.Select(spell => NameText.Exact(spell.Name))));

    private static string Of(Counted counted) =>
        counted is { Kind: TestKind test, Answer: >= 0 } ? NameText.Exact($"{test.Answers[counted.Answer]} {test.Name}") : NameText.Exact(counted.Kind.Name);
}
