namespace Byrelaw.Workshop.Tidying.Printing;

/// <summary>Conditions on one line.</summary>
internal static class ConditionPrinter
{
    /// <summary>The condition; of a list only its head.</summary>
    public static string Of(ConditionSyntax condition) =>
        Subject(condition) + TailPrinter.Of(condition.Tails, demandFirst: condition is MobCountSyntax);

    private static string Subject(ConditionSyntax condition) => condition switch
    {
        CountSyntax count => $"{How(count.Test)} {Words.Either(count.Counted)}",
        TimeSinceSyntax since => $"{DemandPrinter.Of(since.Comparison, since.Low, since.High)} since last {Words.Either(since.Kinds)}",
        MobCountSyntax mob => $"{DemandPrinter.Of(mob.Test)} of her mob with {Words.Name(mob.Measure)}",
        ResultSyntax result => $"{Of(result.Aggregate)} {Words.Name(result.Name)}",
        NamedSyntax named => (named.Not ? "not " : "") + Words.Name(named.Name),
        ListHeadSyntax list => Of(list),
        _ => throw new NotSupportedException($"{condition.GetType().Name} has no printed form."),
    };

    private static string How(CountTestSyntax test) => test is { Comparison: Comparison.Exactly, Low: null or { Value: 0 } } ? "no" : DemandPrinter.Of(test);

    private static string Of(Aggregate aggregate) => aggregate switch
    {
        Aggregate.Latest => "latest",
        Aggregate.Lowest => "lowest",
        Aggregate.Highest => "highest",
        Aggregate.Average => "average",
        _ => "change in",
    };

    private static string Of(ListHeadSyntax list) => list.Kind switch
    {
        ListKind.AnyOf => "any of",
        ListKind.AllOf => "all of",
        ListKind.NoneOf => "none of",
        _ => $"{DemandPrinter.Of(list.Count!)} of",
    };
}
