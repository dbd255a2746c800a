using Pidgin;
using static Pidgin.Parser;

namespace Byrelaw.Language.Grammar;

/// <summary><c>with method natural</c>, right after a kind: which entries of it are meant.</summary>
internal static class FilterClauses
{
    /// <summary>What a reader is told to expect where the name of a detail must stand.</summary>
    public const string Detail = "a detail, such as `method`";

    /// <summary>What a reader is told to expect where a value of a detail must stand.</summary>
    public const string Value = "a value of the detail";

    private static readonly Parser<Token, ValueSyntax> OneValue = OneOf(
        Leaf.Name(Value).Select(name => new ValueSyntax(name.Text, null, null) { Span = name.Span }),
        Leaf.Date.Select(date => new ValueSyntax(date.Span.Text, null, date) { Span = date.Span }));

    private static readonly Parser<Token, Func<NameSyntax, SourceSpan, bool, FilterSyntax>> Values = OneOf(
        Try(Leaf.Word("one", "`one of`").Then(Leaf.Word("of"))).Then(Map(
            (first, more) => ImmutableArray.CreateRange(more.Prepend(first)), OneValue, Try(Leaf.Comma.Labelled("").Then(OneValue)).Several())),
        OneValue.Select(ImmutableArray.Create)).Select<Func<NameSyntax, SourceSpan, bool, FilterSyntax>>(
            values => (detail, start, not) => new FilterSyntax(detail, not, values, null) { Span = start.To(values[^1].Span) });

    private static readonly Parser<Token, Func<NameSyntax, SourceSpan, bool, FilterSyntax>> Exactly = Comparisons.Amount.Select<Func<NameSyntax, SourceSpan, bool, FilterSyntax>>(
        amount => (detail, start, not) => new FilterSyntax(detail, not, [], new CompareSyntax(Comparison.Exactly, amount, null) { Span = amount.Span }) { Span = start.To(amount.Span) });

    private static readonly Parser<Token, Func<NameSyntax, SourceSpan, FilterSyntax>> Demand = OneOf(
        Leaf.Word("recorded").Select<Func<NameSyntax, SourceSpan, FilterSyntax>>(
            recorded => (detail, start) => new FilterSyntax(detail, false, [], null) { Span = start.To(recorded.Span) }),
        Comparisons.Demand.Select<Func<NameSyntax, SourceSpan, FilterSyntax>>(
            compare => (detail, start) => new FilterSyntax(detail, false, [], compare) { Span = start.To(compare.Span) }),
        Map<Token, Maybe<Token>, Func<NameSyntax, SourceSpan, bool, FilterSyntax>, Func<NameSyntax, SourceSpan, FilterSyntax>>(
            (not, finish) => (detail, start) => finish(detail, start, not.HasValue),
            Leaf.Word("not").Optional(), OneOf(Exactly, Values)));

    private static readonly Parser<Token, FilterSyntax> Filter = Map(
        (start, detail, finish) => finish(detail, start.Span),
        Leaf.Word("with", ""), Leaf.OneWord(token => token.IsNamePart, Detail), Demand);

    /// <summary>The name of a kind, and its filters.</summary>
    public static Parser<Token, NameSyntax> Of(Parser<Token, NameSyntax> kind) => Map(
        (name, filters) => filters.ToImmutableArray() is { IsEmpty: false } some ? name with { Filters = some, Alone = name, Span = name.Span.To(some[^1].Span) } : name, kind, Filter.Several());
}
