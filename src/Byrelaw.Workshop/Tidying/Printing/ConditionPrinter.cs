namespace Byrelaw.Workshop.Tidying.Printing;

/// <summary>Conditions on one line.</summary>
internal static class ConditionPrinter
{
    /// <summary>The condition; of a list only its head. What has several spellings or orders is printed the one way, every other form word by word.</summary>
    /// <param name="condition">As written.</param>
    /// <param name="statement">The line that it stands in.</param>
    public static string Print(ConditionSyntax condition, Statement statement) => Subject(condition) is { } subject
        ? subject + TailPrinter.Print(condition.Tails, demandFirst: condition is MobCountSyntax)
        : new TokenPrinter(statement).Print(condition.Span);

    private static string? Subject(ConditionSyntax condition) => condition switch
    {
        CountSyntax count => $"{How(count.Test)} {Words.Either(count.Counted)}",
        TimeSinceSyntax { IsDayOf: true } since => $"at least day {Words.Number(since.Low.Count)} of last {Words.Either(since.Kinds)}",
        TimeSinceSyntax since => $"{DemandPrinter.Print(since.Comparison, since.Low, since.High)} since last {Words.Either(since.Kinds)}",
        MobCountSyntax mob => $"{DemandPrinter.Print(mob.Test)} of her mob with {Words.Kind(mob.Measure)}",
        ResultSyntax result => $"{result.Aggregate.Words()} {Words.Kind(result.Name)}",
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
