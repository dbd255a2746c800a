namespace Byrelaw.Workshop.Tidying.Printing;

/// <summary>Conditions on one line.</summary>
internal static class ConditionPrinter
{
    /// <summary>The condition; of a list only its head. What has several spellings or orders is printed the one way, every other form word by word.</summary>
    /// <param name="condition">As written.</param>
    /// <param name="statement">The line that it stands in.</param>
    public static string Print(ConditionSyntax condition, Statement statement) => Change(condition, statement) is { } change ? change : Subject(condition) is { } subject
        ? subject + TailPrinter.Print(Tails(condition, statement), demandFirst: condition is MobCountSyntax)
        : new TokenPrinter(statement).Print(condition.Span);

    /// <summary><c>lost at most 0.5 body condition since last calving</c>, however it is written; null for every other condition.</summary>
    private static string? Change(ConditionSyntax condition, Statement statement)
    {
        if (condition is not ResultSyntax { Aggregate: Aggregate.Change } result || result.Tails.OfType<CompareSyntax>().ToList() is not [{ High: null } compare]
            || LostOrGained.Of(compare.Comparison, compare.Low.Value.Value) is not { } said)
        {
            return null;
        }

        var demand = compare with { Comparison = said.Comparison, Low = compare.Low with { Value = compare.Low.Value with { Value = said.Limit } } };
        return $"{said.Word} {DemandPrinter.Print(demand)} {Words.Kind(result.Name)}" + TailPrinter.Print([.. Tails(condition, statement).Where(tail => tail != compare)], demandFirst: false);
    }

    /// <summary>Its tails; <c>since calving</c> as <c>since last calving</c>, for an event has no other day.</summary>
    private static ImmutableArray<TailSyntax> Tails(ConditionSyntax condition, Statement statement) => [.. condition.Tails.Select(tail => tail switch
    {
        SinceDateSyntax { Date.Name: { } name } when statement.Names.IsEvent(name) => new SinceLastSyntax([name]) { Span = tail.Span },
        BeforeDaySyntax before => before with { Day = OfLast(before.Day, statement) },
        DaysAfterSyntax after => after with { Day = OfLast(after.Day, statement) },
        _ => tail,
    })];

    private static WindowDaySyntax OfLast(WindowDaySyntax day, Statement statement) => day with { IsLast = day.IsLast || day.Names.Any(statement.Names.IsEvent) };

    private static string? Subject(ConditionSyntax condition) => condition switch
    {
        CountSyntax count => $"{How(count.Test)} {Words.Either(count.Counted)}",
        TimeSinceSyntax { IsDayOf: true } since => $"at least day {Words.Number(since.Low.Count)} of last {Words.Either(since.Kinds)}",
        TimeSinceSyntax since => $"{DemandPrinter.Print(since.Comparison, since.Low, since.High)} since last {Words.Either(since.Kinds)}",
        MobCountSyntax mob => $"{DemandPrinter.Print(mob.Test)} of her mob with {Words.Kind(mob.Measure)}",
        ResultSyntax result => $"{result.Aggregate.Words()} {Words.Kind(result.Name)}",
        NamedSyntax { Name.Text: "age" } => "age", // which may stand for another word, as in `older than 14 months`
        NamedSyntax named => (named.Not ? "not " : "") + Words.Name(named.Name),
        InMobSyntax mob => $"{(mob.Not ? "not " : "")}in mob {string.Join(" or ", mob.Mobs.Select(Words.Name))}",
        ListHeadSyntax list => Print(list),
        _ => null,
    };

    private static string How(CountTestSyntax test) => test is { Comparison: Comparison.Exactly, Low: null or { Value: 0 } } ? "no" : DemandPrinter.Print(test);

    private static string Print(ListHeadSyntax list) => list.Kind switch
    {
        ListKind.AnyOf => "any of",
        ListKind.AllOf => "all of",
        ListKind.NoneOf => "none of",
        _ => $"{DemandPrinter.Print(list.Count!)} of",
    };
}
