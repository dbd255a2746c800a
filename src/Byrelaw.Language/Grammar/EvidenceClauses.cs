using Pidgin;
using static Pidgin.Parser;

namespace Byrelaw.Language.Grammar;

/// <summary>Shares, money, and what numbers rest on.</summary>
internal static class EvidenceClauses
{
    private static readonly Parser<Token, EvidenceSyntax> Weight = Map<Token, Token, NumberSyntax, EvidenceSyntax>(
        (start, animals) => new WeightSyntax(animals) { Span = start.Span.To(animals.Span) }, Leaf.Word("weight"), Leaf.Number);

    private static readonly Parser<Token, EvidenceSyntax> Spread = Map<Token, Token, NumberSyntax, Maybe<Token>, EvidenceSyntax>(
        (start, value, unit) => new SpreadSyntax(value) { Span = start.Span.To(unit.HasValue ? unit.Value.Span : value.Span) },
        Leaf.Word("spread"), Leaf.Number, Leaf.UnitWord.Labelled("").Optional());

    private static readonly Parser<Token, EvidenceSyntax> Counted = Map<Token, Token, NumberSyntax, NumberSyntax, Maybe<NameSyntax>, EvidenceSyntax>(
        (start, hits, of, what) => new CountedSyntax(hits, of, what.GetValueOrDefault()) { Span = start.Span.To(what.HasValue ? what.Value.Span : of.Span) },
        Leaf.Word("from"), Leaf.Number, Leaf.Word("of").Then(Leaf.Number), Leaf.Name("").Optional());

    private static readonly Parser<Token, EvidenceSyntax> OnDay = Map<Token, Maybe<Token>, Token, NumberSyntax, NumberSyntax, EvidenceSyntax>(
        (on, start, day, percent) => new OnDaySyntax(day, percent) { Span = (on.HasValue ? on.Value : start).Span.To(percent.Span) },
        Leaf.Word("on", "").Optional(), Leaf.Word("day", "`day 3 45%`"), Leaf.Number, Leaf.Percent);

    /// <summary>Any number of <c>, weight 40</c>, <c>, spread 6</c>, <c>, from 36 of 80 transfers</c>.</summary>
    public static readonly Parser<Token, ImmutableArray<EvidenceSyntax>> Any =
        Leaf.Comma.Then(OneOf(Weight, Spread, Counted)).Several().Select(ImmutableArray.CreateRange);

    /// <summary><c>80%, weight 30</c>.</summary>
    public static readonly Parser<Token, ShareSyntax> Share = ShareWith(Any);

    /// <summary><c>70%, weight 40, on day 2 20%, day 3 80%</c>.</summary>
    public static readonly Parser<Token, ShareSyntax> ShareByDay = ShareWith(
        Leaf.Comma.Then(OneOf(Weight, Counted, OnDay)).Several().Select(ImmutableArray.CreateRange));

    /// <summary><c>55 NZD</c>.</summary>
    public static readonly Parser<Token, MoneySyntax> Money = Map(
        (amount, currency) => new MoneySyntax(amount, currency) { Span = amount.Span.To(currency.Span) }, Leaf.Number, Leaf.Unit.Labelled("a currency such as `NZD`"));

    private static Parser<Token, ShareSyntax> ShareWith(Parser<Token, ImmutableArray<EvidenceSyntax>> evidence) => Map(
        (percent, rest) => new ShareSyntax(percent, rest) { Span = percent.Span.To(rest.IsEmpty ? percent.Span : rest[^1].Span) },
        Leaf.Percent, evidence);
}
