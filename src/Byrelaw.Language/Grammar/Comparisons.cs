using Pidgin;
using static Pidgin.Parser;

namespace Byrelaw.Language.Grammar;

/// <summary>Demands on numbers and values.</summary>
internal static class Comparisons
{
    /// <summary>What a reader is told to expect where a comparison may stand.</summary>
    public const string Label = "a comparison such as `at least 5`";

    /// <summary><c>at least</c> and its like, with where it starts.</summary>
    public static readonly Parser<Token, (Comparison How, SourceSpan Span)> OneSided = OneOf(
        Map(
            (at, how) => (how.Is("least") ? Comparison.AtLeast : Comparison.AtMost, at.Span.To(how.Span)),
            Leaf.Word("at", Label), OneOf(Leaf.Word("least"), Leaf.Word("most"))),
        Map((more, than) => (Comparison.MoreThan, more.Span.To(than.Span)), Leaf.Word("more", Label), Leaf.Word("than")),
        Map((less, than) => (Comparison.LessThan, less.Span.To(than.Span)), Leaf.Word("less", Label), Leaf.Word("than")),
        Leaf.Word("exactly", Label).Select(token => (Comparison.Exactly, token.Span)));

    /// <summary>A number with its unit, or a share.</summary>
    public static readonly Parser<Token, AmountSyntax> Amount = OneOf(
        Map(
            (value, of) => new AmountSyntax(value, null, true, of.GetValueOrDefault()) { Span = of.HasValue ? value.Span.To(of.Value.Span) : value.Span },
            Leaf.Percent, Leaf.Word("of", "`of` and a fact").Then(Leaf.Name("the name of a fact")).Optional()),
        Map(
            (value, unit) => new AmountSyntax(value, unit.GetValueOrDefault(), false, null) { Span = unit.HasValue ? value.Span.To(unit.Value.Span) : value.Span },
            Leaf.Number, Leaf.Unit.Optional()));

    /// <summary>A demand on a number.</summary>
    public static readonly Parser<Token, CompareSyntax> Demand = OneOf(
        Map((how, low) => new CompareSyntax(how.How, low, null) { Span = how.Span.To(low.Span) }, OneSided, Amount),
        Map(
            (between, low, high) => new CompareSyntax(Comparison.Between, low, high) { Span = between.Span.To(high.Span) },
            Leaf.Word("between", Label), Amount, Leaf.Word("and").Then(Amount)));

    /// <summary>A demand; with <c>ago</c> after it a window, with <c>apart</c> how long one is after another.</summary>
    public static readonly Parser<Token, TailSyntax> Compare = Map<Token, CompareSyntax, Maybe<Token>, TailSyntax>(
        (demand, word) => !word.HasValue ? demand
            : word.Value.Is("ago") ? new AgoSyntax(demand) { Span = demand.Span.To(word.Value.Span) }
            : new ApartSyntax(demand) { Span = demand.Span.To(word.Value.Span) },
        Demand, OneOf(Leaf.Word("ago", ""), Leaf.Word("apart", "")).Optional());

    private static readonly Parser<Token, ValueSyntax> Value = OneOf(
        Leaf.Name("a value").Select(name => new ValueSyntax(name.Text, null, null) { Span = name.Span }),
        Leaf.Number.Select(number => new ValueSyntax(number.Span.Text, number, null) { Span = number.Span }),
        Leaf.Date.Select(date => new ValueSyntax(date.Span.Text, null, date) { Span = date.Span }));

    private static readonly Parser<Token, Func<SourceSpan, bool, TailSyntax>> AfterIs = OneOf(
        Leaf.Word("recorded").Select<Func<SourceSpan, bool, TailSyntax>>(
            recorded => (start, not) => new RecordedSyntax(not) { Span = start.To(recorded.Span) }),
        // `one` is free elsewhere, so a value may start with it; `one of` may not.
        Try(Leaf.Word("one", "`one of`").Then(Leaf.Word("of"))).Then(Lists.Of(Value, Leaf.Comma)).Select<Func<SourceSpan, bool, TailSyntax>>(
            values => (start, not) => new IsSyntax(not, values) { Span = start.To(values[^1].Span) }),
        Map(
            (first, others) => ImmutableArray.CreateRange(others.Prepend(first)), Value, Try(Leaf.Word("or", "").Then(Value).Before(Not(Leaf.Word("is", "")))).Several())
            .Select<Func<SourceSpan, bool, TailSyntax>>(
                values => (start, not) => new IsSyntax(not, values) { IsJoinedByOr = values.Length > 1, Span = start.To(values[^1].Span) }));

    public static readonly Parser<Token, TailSyntax> Is = Map(
        (start, not, finish) => finish(start.Span, not.HasValue),
        Leaf.Word("is"), Leaf.Word("not", "").Optional(), AfterIs);
}
