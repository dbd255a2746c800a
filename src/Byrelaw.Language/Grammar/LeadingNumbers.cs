using Pidgin;
using static Pidgin.Parser;

namespace Byrelaw.Language.Grammar;

/// <summary>Conditions that start with a demand: a count, a time since, a count in her mob, <c>at least 2 of</c>.</summary>
internal static class LeadingNumbers
{
    /// <summary><c>at least 2</c>, <c>between 6 and 8</c>, <c>between 4 weeks and 6</c>.</summary>
    private sealed record Demand(Comparison Comparison, NumberSyntax Low, Token? LowUnit, NumberSyntax? High, SourceSpan Span);

    private static readonly Parser<Token, Demand> Leading = OneOf(
        Map((how, low) => new Demand(how.How, low, null, null, how.Span.To(low.Span)), Comparisons.OneSided, Leaf.Number),
        Map(
            (between, low, unit, high) => new Demand(Comparison.Between, low, unit.GetValueOrDefault(), high, between.Span.To(high.Span)),
            Leaf.Word("between"), Leaf.Number, Leaf.DurationUnit.Labelled("").Optional(), Leaf.Word("and").Then(Leaf.Number)));

    /// <summary><c>at least day 28 of last transfer</c>.</summary>
    private static readonly Parser<Token, ConditionSyntax> DayOf = Map<Token, Token, (DurationSyntax Day, ImmutableArray<NameSyntax> Kinds), ConditionSyntax>(
        (at, day) => new TimeSinceSyntax(Comparison.AtLeast, day.Day, null, day.Kinds) { IsDayOf = true, Span = at.Span.To(day.Kinds[^1].Span) },
        Leaf.Word("at", ""), Leaf.Word("least", "").Then(WindowClauses.DayOfLast));

    /// <summary>All of them; <paramref name="tails"/> is what may follow.</summary>
    public static Parser<Token, ConditionSyntax> Of(Parser<Token, ImmutableArray<TailSyntax>> tails)
    {
        var timeSince = Map<Token, Token, ImmutableArray<NameSyntax>, Func<Demand, ConditionSyntax>>(
            (unit, kinds) => demand => TimeSince(demand, unit, kinds),
            Leaf.DurationUnit, Leaf.Word("since").Then(WindowClauses.LastKinds));
        var mob = Map<Token, NameSyntax, ImmutableArray<TailSyntax>, Func<Demand, ConditionSyntax>>(
            (measure, rest) => demand => new MobCountSyntax(CountTest(demand), measure) { Span = Conditions.Cover(demand.Span, measure.Span, rest), Tails = rest },
            Leaf.Word("her", "`her mob`").Then(Leaf.Word("mob")).Then(Leaf.Word("with")).Then(FilterClauses.Of(Leaf.Name("a measure"))), tails);
        var ofSomething = Map<Token, Token, Maybe<Func<Demand, ConditionSyntax>>, Func<Demand, ConditionSyntax>>(
            (of, rest) => demand => rest.HasValue ? rest.Value(demand) : new ListHeadSyntax(ListKind.AtLeastOf, CountTest(demand)) { Span = demand.Span.To(of.Span) },
            Leaf.Word("of"), mob.Optional());
        var count = Map<Token, ImmutableArray<NameSyntax>, ImmutableArray<TailSyntax>, Func<Demand, ConditionSyntax>>(
            (counted, rest) => demand => new CountSyntax(CountTest(demand), counted) { Span = Conditions.Cover(demand.Span, counted[^1].Span, rest), Tails = rest },
            Lists.Kinds("what is counted, such as `heat`"), tails);
        return OneOf(Try(DayOf), Map((demand, finish) => finish(demand), Leading, OneOf(timeSince, ofSomething, count)));
    }

    private static TimeSinceSyntax TimeSince(Demand demand, Token unit, ImmutableArray<NameSyntax> kinds)
    {
        var low = Leaf.ToDuration(demand.Low, demand.LowUnit ?? unit);
        var high = demand.High is null ? null : Leaf.ToDuration(demand.High, unit);
        return new TimeSinceSyntax(demand.Comparison, low, high, kinds) { Span = demand.Span.To(kinds[^1].Span) };
    }

    private static CountTestSyntax CountTest(Demand demand) =>
        new(demand.Comparison, demand.Low, demand.High, demand.LowUnit is { } unit ? new UnitSyntax(unit.Text) { Span = unit.Span } : null) { Span = demand.Span };
}
