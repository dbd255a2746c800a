using Pidgin;
using static Pidgin.Parser;
using static Pidgin.Parser<Byrelaw.Language.Lexing.Token>;

namespace Byrelaw.Language.Grammar;

/// <summary>Lines that start a block of planning.</summary>
internal static class PlanHeads
{
    public static readonly Parser<Token, LineSyntax> Method = Map<Token, Token, TextSyntax, LineSyntax>(
        (start, name) => new MethodLine(name) { Span = start.Span.To(name.Span) }, Leaf.Word("method"), Leaf.Text("the method's name in quotes"));

    public static readonly Parser<Token, LineSyntax> Task = Map<Token, Token, TextSyntax, LineSyntax>(
        (start, name) => new TaskLine(name) { Span = start.Span.To(name.Span) }, Leaf.Word("task"), Leaf.Text("what is to be done, in quotes"));

    public static readonly Parser<Token, LineSyntax> Done = Map<Token, Token, TextSyntax, DateSyntax, Maybe<NumberSyntax>, LineSyntax>(
        (start, task, on, session) => new DoneLine(task, on, session.GetValueOrDefault()) { Span = start.Span.To(session.HasValue ? session.Value.Span : on.Span) },
        Leaf.Word("done"), Leaf.Text("a task's name in quotes"), Leaf.Word("on").Then(Leaf.Date),
        Leaf.Word("for", "`for session 1`").Then(Leaf.Word("session")).Then(Leaf.Number).Optional());

    public static readonly Parser<Token, LineSyntax> Stopped = Map<Token, Token, NumberSyntax, LineSyntax>(
        (start, session) => new StoppedLine(session) { Span = start.Span.To(session.Span) }, Leaf.Word("stopped"), Leaf.Word("session").Then(Leaf.Number));

    public static readonly Parser<Token, LineSyntax> Yardstick = Map(
        (start, finish) => finish(start),
        Leaf.Word("yardstick"),
        OneOf(
            Map<Token, TextSyntax, NumberSyntax, Func<Token, LineSyntax>>(
                (method, used) => start => new YardstickLine(method, used, null) { Span = start.Span.To(used.Span) },
                Leaf.Text("a method's name in quotes"), Leaf.Word("used").Then(Leaf.Percent)),
            Leaf.Word("cost", "`cost per embryo transferred`").Then(Leaf.Word("per")).Then(Leaf.Word("embryo")).Then(Leaf.Word("transferred")).Then(EvidenceClauses.Money)
                .Select<Func<Token, LineSyntax>>(amount => start => new YardstickLine(null, null, amount) { Span = start.Span.To(amount.Span) })));

    public static readonly Parser<Token, LineSyntax> Caution = Map<Token, Token, NameSyntax, TextSyntax, LineSyntax>(
        (start, about, text) => new CautionLine(about, text) { Span = start.Span.To(text.Span) },
        Leaf.Word("caution"), Leaf.ListName("what the caution is about, such as `prostaglandin`"), Leaf.Text("the caution in quotes"));

    public static readonly Parser<Token, LineSyntax> Visits = Map<Token, Token, TextSyntax, Maybe<TextSyntax>, Maybe<ScheduleSyntax>, LineSyntax>(
        (start, name, region, schedule) => new VisitsLine(name, region.GetValueOrDefault(), schedule.GetValueOrDefault())
        {
            Span = start.Span.To(schedule.HasValue ? schedule.Value.Span : region.HasValue ? region.Value.Span : name.Span),
        },
        Leaf.Word("visits"), Leaf.Text("what the team comes for, in quotes"),
        Leaf.Word("in", "`in` and a region").Then(Leaf.Text("a region in quotes")).Optional(),
        OneOf(DayClauses.Schedule, DayClauses.AfterVisits).Optional());

    // The words of a quantity may be any: which are known is decided when they are bound.
    private static readonly Parser<Token, NameSyntax> Quantity = Leaf.NameOf(IsWord, "what is assumed, such as `pregnant per transfer`");

    public static readonly Parser<Token, LineSyntax> Assume = Map<Token, Token, NameSyntax, Maybe<TextSyntax>, (NumberSyntax Value, bool IsShare, UnitSyntax? Unit), ImmutableArray<EvidenceSyntax>, LineSyntax>(
        (start, quantity, method, value, evidence) => new AssumeLine(quantity, method.GetValueOrDefault(), value.Value, value.IsShare, value.Unit, evidence)
        {
            Span = start.Span.To(!evidence.IsEmpty ? evidence[^1].Span : value.Unit?.Span ?? value.Value.Span),
        },
        Leaf.Word("assume"), Quantity, Leaf.Text("").Optional(),
        OneOf(
            Leaf.Percent.Select<(NumberSyntax, bool, UnitSyntax?)>(percent => (percent, true, null)),
            Map<Token, NumberSyntax, Maybe<UnitSyntax>, (NumberSyntax, bool, UnitSyntax?)>(
                (number, unit) => (number, false, unit.GetValueOrDefault()), Leaf.Number, Leaf.Unit.Labelled("").Optional())),
        EvidenceClauses.Any);

    private static bool IsWord(Token token) => token.Kind is TokenKind.Word or TokenKind.Phrase;
}
