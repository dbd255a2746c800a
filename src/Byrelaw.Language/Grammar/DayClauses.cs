using Pidgin;
using static Pidgin.Parser;

namespace Byrelaw.Language.Grammar;

/// <summary>Days as the statements of a plan name them.</summary>
internal static class DayClauses
{
    /// <summary><c>45 days before first transfer</c>.</summary>
    private static readonly Parser<Token, DayReferenceSyntax> Reckoned = Map(
        (wait, side, name) => new DayReferenceSyntax(null, wait, side.Is("before"), name) { Span = wait.Span.To(name.Span) },
        Leaf.Duration, OneOf(Leaf.Word("before"), Leaf.Word("after")), Leaf.Name("the name of a date, such as `collection`"));

    /// <summary><c>2026-10-12</c> or <c>collection</c>.</summary>
    private static readonly Parser<Token, DayReferenceSyntax> Plain = OneOf(
        Leaf.Date.Select(date => new DayReferenceSyntax(date, null, false, null) { Span = date.Span }),
        Leaf.Name("the name of a date, such as `collection`").Select(name => new DayReferenceSyntax(null, null, false, name) { Span = name.Span }));

    /// <summary><c>on 2026-10-12</c>, <c>on collection</c>, <c>8 days after collection</c>.</summary>
    public static readonly Parser<Token, DayReferenceSyntax> Reference = OneOf(Leaf.Word("on").Then(Plain), Reckoned);

    /// <summary>The same where only a date may follow <c>on</c>.</summary>
    public static readonly Parser<Token, DayReferenceSyntax> DateOrReckoned = OneOf(
        Leaf.Word("on").Then(Leaf.Date).Select(date => new DayReferenceSyntax(date, null, false, null) { Span = date.Span }), Reckoned);

    /// <summary>After <c>not before</c>: <c>60 days before collection</c>, <c>2026-08-01</c>, <c>collection</c>.</summary>
    public static readonly Parser<Token, DayReferenceSyntax> Bare = OneOf(Plain, Reckoned);

    /// <summary>Dates separated by commas.</summary>
    public static readonly Parser<Token, ImmutableArray<DateSyntax>> Dates = Lists.Of(Leaf.Date, Leaf.Comma);

    /// <summary><c>every 14 days from A to B</c> or <c>on A, B</c>.</summary>
    public static readonly Parser<Token, ScheduleSyntax> Schedule = OneOf(
        Map<Token, Token, DurationSyntax, DateSyntax, DateSyntax, ScheduleSyntax>(
            (start, every, from, to) => new EverySyntax(every, from, to) { Span = start.Span.To(to.Span) },
            Leaf.Word("every"), Leaf.Duration, Leaf.Word("from").Then(Leaf.Date), Leaf.Word("to").Then(Leaf.Date)),
        Map<Token, Token, ImmutableArray<DateSyntax>, ScheduleSyntax>(
            (start, dates) => new OnDatesSyntax(dates) { Span = start.Span.To(dates[^1].Span) }, Leaf.Word("on"), Dates));

    /// <summary><c>8 days after "collection"</c>.</summary>
    public static readonly Parser<Token, ScheduleSyntax> AfterVisits = Map<Token, DurationSyntax, TextSyntax, ScheduleSyntax>(
        (wait, name) => new AfterVisitsSyntax(wait, name) { Span = wait.Span.To(name.Span) },
        Leaf.Duration, Leaf.Word("after").Then(Leaf.Text("the name of visits in quotes")));
}
