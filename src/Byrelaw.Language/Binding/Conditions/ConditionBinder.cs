namespace Byrelaw.Language.Binding.Conditions;

/// <summary>Binds one condition: what its names mean, and whether its parts fit together. What cannot be bound
/// is a <see cref="BrokenCondition"/>, and its problems are told.</summary>
internal static class ConditionBinder
{
    /// <summary>Binds a condition that is not the head of a list.</summary>
    public static Condition Bind(this Context context, ConditionSyntax condition) =>
        condition switch
        {
            CountSyntax count => context.Count(count),
            TimeSinceSyntax since => context.TimeSince(since),
            MobCountSyntax mob => context.MobCount(mob),
            ResultSyntax result => context.Result(result),
            NamedSyntax named => context.Named(named),
            InMobSyntax mob => new InMobCondition([.. mob.Mobs.Select(name => name.Text).DistinctBy(NameFolding.Fold)], mob.Not) { Span = mob.Span },
            _ => context.Fail<Condition>(ConditionProblems.ListInList(condition.Span)),
        } ?? new BrokenCondition { Span = condition.Span };

    private static Condition? Count(this Context context, CountSyntax count)
    {
        var tails = new TailSorter(context, count, count.Counted[0].Text);
        var apart = tails.Take<ApartSyntax>();
        var (test, counted, windows) = (context.CountTest(count.Test), context.Counted(count.Counted), context.Windows(tails));
        var fits = tails.Finish(demandFound: false);
        if (windows is { IsEmpty: true } && fits)
        {
            context.Problems.Add(ConditionProblems.CountWithoutWindow(count.Span));
            return null;
        }

        return !fits || test is null || counted is not { } what || windows is not { } when ? null
            : apart is not null ? context.Apart(count, test, apart, what, when)
            : new CountCondition(test, what, when) { Span = count.Span };
    }

    private static ApartCondition? Apart(this Context context, CountSyntax count, CountTest test, ApartSyntax apart, ImmutableArray<Counted> counted, ImmutableArray<Window> windows)
    {
        if (test.Comparison != Comparison.AtLeast || test.Low is < ApartCondition.Fewest or > ApartCondition.Most)
        {
            return context.Fail<ApartCondition>(ConditionProblems.ApartOfOthers(count.Test.Span));
        }

        if (apart.Compare.Comparison is not (Comparison.AtLeast or Comparison.AtMost or Comparison.Between))
        {
            return context.Fail<ApartCondition>(ConditionProblems.ApartOtherwise(apart.Span));
        }

        return context.TimeTest(apart.Compare) is { } time ? new ApartCondition(test.Low, counted, time, windows) { Span = count.Span } : null;
    }

    private static TimeSinceCondition? TimeSince(this Context context, TimeSinceSyntax since)
    {
        var (test, kinds) = (context.TimeTest(since, since.Comparison, since.Low, since.High), context.Kinds(since.Kinds));
        return test is not null && kinds is { } found ? new TimeSinceCondition(test, found) { IsDayOf = since.IsDayOf, Span = since.Span } : null;
    }
}
