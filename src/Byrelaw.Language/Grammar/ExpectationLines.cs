using Pidgin;
using static Pidgin.Parser;

namespace Byrelaw.Language.Grammar;

/// <summary>Lines of an expectation: what records look like when they are true, and whose promise falls where they do not.</summary>
internal static class ExpectationLines
{
    private static readonly Parser<Token, (DurationSyntax? From, DurationSyntax To)> HowFar = OneOf(
        Leaf.Word("at", "within how many days, such as `200 to 320 days`").Then(Leaf.Word("most")).Then(Leaf.Duration).Select(to => ((DurationSyntax?)null, to)),
        Map(
            (from, to) => ((DurationSyntax?)new DurationSyntax(from, to.Unit) { Span = from.Span }, to),
            Leaf.Number, Leaf.Word("to").Then(Leaf.Duration)));

    public static readonly Parser<Token, LineSyntax> Every = Map<Token, Token, NameSyntax, (DurationSyntax? From, DurationSyntax To), ComesSide, ImmutableArray<NameSyntax>, LineSyntax>(
        (start, entry, far, side, others) => new EveryComesLine(entry, far.From, far.To, side, others) { Span = start.Span.To(others[^1].Span) },
        Leaf.Word("every"), Leaf.NameUntil("comes", "an event, or an answer and its test"), Leaf.Word("comes").Then(HowFar),
        OneOf(Leaf.Word("after").ThenReturn(ComesSide.After), Leaf.Word("before").ThenReturn(ComesSide.Before)),
        Lists.Kinds("what it comes after or before, such as `mating`"));

    public static readonly Parser<Token, LineSyntax> Rate = Map<Token, Token, NumberSyntax, NameSyntax, NumberSyntax, Token, LineSyntax>(
        (start, count, kind, cows, end) => new RateLine(count, kind, cows) { Span = start.Span.To(end.Span) },
        Leaf.Word("at"), Leaf.Word("least").Then(Leaf.Number), Leaf.NameUntil("a", "an event"),
        Leaf.Word("a").Then(Leaf.Word("year")).Then(Leaf.Word("for")).Then(Leaf.Word("every")).Then(Leaf.Number), Leaf.Word("cows"));

    private static readonly Parser<Token, Func<SourceSpan, ImmutableArray<NameSyntax>, LineSyntax>> HowMuch = OneOf(
        Map<Token, Token, Token, Func<SourceSpan, ImmutableArray<NameSyntax>, LineSyntax>>(
            (_, her) => (start, kinds) => new ElseLine(kinds, true, null) { Span = start.To(her.Span) },
            Leaf.Word("for", "`for her`"), Leaf.Word("her")),
        Leaf.Comma.Labelled("`, over 2%`").Then(Leaf.Word("over")).Then(Leaf.Percent).Select<Func<SourceSpan, ImmutableArray<NameSyntax>, LineSyntax>>(
            percent => (start, kinds) => new ElseLine(kinds, false, percent) { Span = start.To(percent.Span) }));

    public static readonly Parser<Token, LineSyntax> Else = Map<Token, Token, ImmutableArray<NameSyntax>, Token, Maybe<Func<SourceSpan, ImmutableArray<NameSyntax>, LineSyntax>>, LineSyntax>(
        (start, kinds, complete, finish) => finish.HasValue
            ? finish.Value(start.Span, kinds)
            : new ElseLine(kinds, false, null) { Span = start.Span.To(complete.Span) },
        Leaf.Word("else"), Lists.Of(Leaf.NameUntil("are", "an event, measure or test"), Leaf.Comma),
        OneOf(Leaf.Word("is"), Leaf.Word("are")).Then(Leaf.Word("not")).Then(Leaf.Word("complete")), HowMuch.Optional());
}
