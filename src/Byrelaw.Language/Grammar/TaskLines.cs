using Pidgin;
using static Pidgin.Parser;
using static Pidgin.Parser<Byrelaw.Language.Lexing.Token>;

namespace Byrelaw.Language.Grammar;

/// <summary>Lines inside <c>task</c> and <c>visits</c>.</summary>
internal static class TaskLines
{
    public static readonly Parser<Token, LineSyntax> Due = Map<Token, Token, DayReferenceSyntax, LineSyntax>(
        (start, day) => new DueLine(day) { Span = start.Span.To(day.Span) }, Leaf.Word("due"), DayClauses.Reference);

    public static readonly Parser<Token, LineSyntax> EachSession = Map<Token, Token, Token, LineSyntax>(
        (start, end) => new EachSessionLine { Span = start.Span.To(end.Span) }, Leaf.Word("each"), Leaf.Word("session"));

    public static readonly Parser<Token, LineSyntax> DecidedBy = Map<Token, Token, ImmutableArray<TextSyntax>, LineSyntax>(
        (start, who) => new DecidedByLine(who) { Span = start.Span.To(who[^1].Span) },
        Leaf.Word("decided"), Leaf.Word("by").Then(Lists.Of(Leaf.Text("who decides, in quotes"), Leaf.Comma)));

    public static readonly Parser<Token, LineSyntax> IfStopped = Map<Token, Token, TextSyntax, LineSyntax>(
        (start, what) => new IfStoppedLine(what) { Span = start.Span.To(what.Span) },
        Leaf.Word("if"), Leaf.Word("stopped").Then(Leaf.Text("what becomes of the treated, in quotes")));

    /// <summary><c>not before DAY</c> or <c>not needed</c>.</summary>
    public static readonly Parser<Token, LineSyntax> NotBeforeOrNeeded = Map(
        (start, finish) => finish(start),
        Leaf.Word("not"),
        OneOf(
            Leaf.Word("before").Then(DayClauses.Bare).Select<Func<Token, LineSyntax>>(day => start => new NotBeforeLine(day) { Span = start.Span.To(day.Span) }),
            Leaf.Word("needed").Select<Func<Token, LineSyntax>>(end => start => new NotNeededLine { Span = start.Span.To(end.Span) })));

    public static readonly Parser<Token, LineSyntax> ResultsTake = Map<Token, Token, DurationSyntax, LineSyntax>(
        (start, length) => new ResultsTakeLine(length) { Span = start.Span.To(length.Span) }, Leaf.Word("results"), Leaf.Word("take").Then(Leaf.Duration));

    public static readonly Parser<Token, LineSyntax> Takes = Map<Token, Token, DurationSyntax, LineSyntax>(
        (start, length) => new TakesLine(length) { Span = start.Span.To(length.Span) }, Leaf.Word("takes"), Leaf.Duration);

    // A text in quotes by itself is a rule; a name without quotes is a kind of record.
    private static readonly Parser<Token, SyntaxNode> Settled = OneOf(
        Leaf.Text("a rule's name in quotes").Select<SyntaxNode>(text => text),
        Leaf.NameOf(IsKindPart, "an event, measure or test").Select<SyntaxNode>(name => name));

    public static readonly Parser<Token, LineSyntax> Settles = Map<Token, Token, ImmutableArray<SyntaxNode>, LineSyntax>(
        (start, what) => new SettlesLine(what) { Span = start.Span.To(what[^1].Span) }, Leaf.Word("settles"), Lists.Of(Settled, Leaf.Comma));

    public static readonly Parser<Token, LineSyntax> Schedule = DayClauses.Schedule.Select<LineSyntax>(schedule => new ScheduleLine(schedule) { Span = schedule.Span });

    private static readonly Parser<Token, DayOffSyntax> DayOff = OneOf(
        Leaf.Date.Select(date => new DayOffSyntax(date, null) { Span = date.Span }),
        Leaf.OneWord(token => token.Kind == TokenKind.Word && token.IsNamePart, "a weekday such as `Sundays`, or `holidays`")
            .Select(word => new DayOffSyntax(null, word) { Span = word.Span }));

    public static readonly Parser<Token, LineSyntax> NotOn = Map<Token, Token, ImmutableArray<DayOffSyntax>, LineSyntax>(
        (start, days) => new NotOnLine(days) { Span = start.Span.To(days[^1].Span) }, Leaf.Word("not"), Leaf.Word("on").Then(Lists.Of(DayOff, Leaf.Comma)));

    private static bool IsKindPart(Token token) => token.IsNamePart && token.Kind != TokenKind.Text;
}
