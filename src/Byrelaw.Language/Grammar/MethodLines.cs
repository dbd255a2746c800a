using Pidgin;
using static Pidgin.Parser;

namespace Byrelaw.Language.Grammar;

/// <summary>Lines inside <c>method</c>.</summary>
internal static class MethodLines
{
    private static readonly Parser<Token, (NumberSyntax Hours, NumberSyntax Day)> HoursAfter = Map(
        (hours, day) => (hours, day), Leaf.Number,
        OneOf(Leaf.Word("hours"), Leaf.Word("hour", "")).Then(Leaf.Word("after")).Then(Leaf.Word("day")).Then(Leaf.Number));

    private static readonly Parser<Token, (DeviceMove Move, Token Token)> Device = Leaf.Word("device", "`device in` or `device out`").Then(OneOf(
        Leaf.Word("in").Select(token => (DeviceMove.In, token)), Leaf.Word("out").Select(token => (DeviceMove.Out, token))));

    // What stands after a step: how long after an earlier one, and what becomes of a device, in this order.
    private static readonly Parser<Token, StepTail> Tail = Leaf.Comma.Labelled("`, 56 hours after day 7` or `, device in`").Then(OneOf(
        Map(
            (after, device) => new StepTail(after.Hours, after.Day, device.HasValue ? device.Value.Move : null, device.HasValue ? device.Value.Token.Span : after.Day.Span),
            HoursAfter, Leaf.Comma.Labelled("`, device in`").Then(Device).Optional()),
        Device.Select(device => new StepTail(null, null, device.Move, device.Token.Span))));

    public static readonly Parser<Token, LineSyntax> Step = Map<Token, Token, NumberSyntax, Maybe<DayPart>, TextSyntax, Maybe<StepTail>, LineSyntax>(
        (start, day, part, text, tail) => new StepLine(
            day, part.HasValue ? part.Value : null, text, tail.GetValueOrDefault()?.Hours, tail.GetValueOrDefault()?.Day, tail.GetValueOrDefault()?.Device)
        {
            Span = start.Span.To(tail.HasValue ? tail.Value.End : text.Span),
        },
        Leaf.Word("day"), Leaf.Number,
        OneOf(Leaf.Word("morning").ThenReturn(DayPart.Morning), Leaf.Word("evening").ThenReturn(DayPart.Evening)).Optional(),
        Leaf.Text("what is done, in quotes"), Tail.Optional());

    public static readonly Parser<Token, LineSyntax> Suits = Map<Token, Token, ConditionSyntax, LineSyntax>(
        (start, condition) => new SuitsLine(condition) { Span = start.Span.To(condition.Span) }, Leaf.Word("suits"), Conditions.Condition);

    public static readonly Parser<Token, LineSyntax> CountsAsHeat = Map<Token, Token, NumberSyntax, LineSyntax>(
        (start, day) => new CountsAsHeatLine(day) { Span = start.Span.To(day.Span) },
        Leaf.Word("counts"), Leaf.Word("as").Then(Leaf.Word("heat")).Then(Leaf.Word("on")).Then(Leaf.Word("day")).Then(Leaf.Number));

    public static readonly Parser<Token, LineSyntax> InHeat = Rate(
        Leaf.Word("in").Before(Leaf.Word("heat")), EvidenceClauses.ShareByDay, share => new InHeatLine(share) { Span = share.Span });

    public static readonly Parser<Token, LineSyntax> HeatSeen = Rate(
        Leaf.Word("heat").Before(Leaf.Word("seen")), EvidenceClauses.Share, share => new HeatSeenLine(share) { Span = share.Span });

    public static readonly Parser<Token, LineSyntax> Accepted = Rate(
        Leaf.Word("accepted").Before(Leaf.Word("on")).Before(Leaf.Word("the")).Before(Leaf.Word("day")), EvidenceClauses.Share, share => new AcceptedLine(share) { Span = share.Span });

    public static readonly Parser<Token, LineSyntax> Cycles = Map<Token, Token, DurationSyntax, LineSyntax>(
        (start, every) => new CyclesLine(every) { Span = start.Span.To(every.Span) }, Leaf.Word("cycles"), Leaf.Word("every").Then(Leaf.Duration));

    public static readonly Parser<Token, LineSyntax> Again = Map<Token, Token, NumberSyntax, NumberSyntax, Maybe<NumberSyntax>, LineSyntax>(
        (start, by, from, to) => new AgainLine(by, from, to.GetValueOrDefault()) { Span = start.Span.To(to.HasValue ? to.Value.Span : from.Span) },
        Leaf.Word("if"),
        Leaf.Word("not").Then(Leaf.Word("seen")).Then(Leaf.Word("by")).Then(Leaf.Word("day")).Then(Leaf.Number),
        Leaf.Comma.Then(Leaf.Word("again")).Then(Leaf.Word("on")).Then(Leaf.Word("day")).Then(Leaf.Number),
        Leaf.Word("to").Then(Leaf.Number).Optional());

    public static readonly Parser<Token, LineSyntax> Flushed = Map<Token, Token, NumberSyntax, LineSyntax>(
        (start, day) => new FlushedLine(day) { Span = start.Span.To(day.Span) },
        Leaf.Word("flushed"), Leaf.Word("on").Then(Leaf.Word("day")).Then(Leaf.Number));

    public static readonly Parser<Token, LineSyntax> Costs = Map<Token, Token, MoneySyntax, Maybe<NameSyntax>, LineSyntax>(
        (start, amount, per) => new CostsLine(amount, per.GetValueOrDefault()) { Span = start.Span.To(per.HasValue ? per.Value.Span : amount.Span) },
        Leaf.Word("costs"), EvidenceClauses.Money, Leaf.Word("per").Then(Leaf.Name("`animal treated`")).Optional());

    public static readonly Parser<Token, LineSyntax> For = Map<Token, Token, NameSyntax, LineSyntax>(
        (start, list) => new ForLine(list) { Span = start.Span.To(list.Span) }, Leaf.Word("for"), Leaf.ListName("the name of a list, such as `donors`"));

    private sealed record StepTail(NumberSyntax? Hours, NumberSyntax? Day, DeviceMove? Device, SourceSpan End);

    private static Parser<Token, LineSyntax> Rate(Parser<Token, Token> head, Parser<Token, ShareSyntax> share, Func<ShareSyntax, LineSyntax> make) =>
        Map((start, said) => { var line = make(said); return line with { Span = start.Span.To(said.Span) }; }, head, share);
}
