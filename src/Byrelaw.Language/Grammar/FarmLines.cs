using System.Collections.Immutable;
using Byrelaw.Language.Lexing;
using Byrelaw.Language.Syntax;
using Byrelaw.Language.Syntax.Conditions;
using Byrelaw.Language.Syntax.Lines;
using Pidgin;
using static Pidgin.Parser;

namespace Byrelaw.Language.Grammar;

/// <summary>Lines inside <c>records</c> and <c>programme</c>.</summary>
internal static class FarmLines
{
    public static readonly Parser<Token, LineSyntax> UpTo = Map<Token, Token, DateSyntax, LineSyntax>(
        (start, day) => new UpToLine(day) { Span = start.Span.To(day.Span) }, Leaf.Word("up"), Leaf.Word("to").Then(Leaf.Date));

    public static readonly Parser<Token, LineSyntax> CompleteFor = Map<Token, Token, ImmutableArray<NameSyntax>, DateSyntax, LineSyntax>(
        (start, kinds, since) => new CompleteForLine(kinds, since) { Span = start.Span.To(since.Span) },
        Leaf.Word("complete"), Leaf.Word("for").Then(Lists.Names("an event, measure or test")), Leaf.Word("since").Then(Leaf.Date));

    public static readonly Parser<Token, LineSyntax> LeaveOut = Map<Token, Token, ImmutableArray<NameSyntax>, LineSyntax>(
        (start, names) => new LeaveOutLine(names) { Span = start.Span.To(names[^1].Span) },
        Leaf.Word("leave"), Leaf.Word("out").Then(Lists.Names("a kind of record")));

    public static readonly Parser<Token, LineSyntax> Collection = Map<Token, Token, DateSyntax, LineSyntax>(
        (start, day) => new CollectionLine(day) { Span = start.Span.To(day.Span) }, Leaf.Word("collection"), Leaf.Word("on").Then(Leaf.Date));

    public static readonly Parser<Token, LineSyntax> Transfer = Map<Token, Token, (DateSyntax? Day, DurationSyntax? Wait, NameSyntax? After), Maybe<DurationSyntax>, LineSyntax>(
        (start, when, over) => new TransferLine(when.Day, when.Wait, when.After, over.GetValueOrDefault())
        {
            Span = start.Span.To(over.HasValue ? over.Value.Span : (when.Day?.Span ?? when.After!.Span)),
        },
        Leaf.Word("transfer"),
        OneOf(
            Leaf.Word("on").Then(Leaf.Date).Select<(DateSyntax?, DurationSyntax?, NameSyntax?)>(day => (day, null, null)),
            Map<Token, DurationSyntax, NameSyntax, (DateSyntax?, DurationSyntax?, NameSyntax?)>(
                (wait, after) => (null, wait, after), Leaf.Duration, Leaf.Word("after").Then(Leaf.Name("the name of a date, such as `collection`")))),
        Leaf.Comma.Labelled("`, over N days`").Then(Leaf.Word("over")).Then(Leaf.Duration).Optional());

    public static readonly Parser<Token, LineSyntax> Date = Map<Token, Token, NameSyntax, DateSyntax, LineSyntax>(
        (start, name, day) => new DateLine(name, day) { Span = start.Span.To(day.Span) },
        Leaf.Word("date"), Leaf.DeclaredName("a name for the date"), Leaf.Word("on").Then(Leaf.Date));

    private static readonly Parser<Token, ImmutableArray<TextSyntax>> Animals = Map(
        (first, more) => ImmutableArray.CreateRange(more.Prepend(first)),
        Leaf.Text("animals' numbers in quotes"), Try(Leaf.Comma.Then(Leaf.Text(""))).Several());

    private static readonly Parser<Token, (DateReferenceSyntax First, DateReferenceSyntax? Last)> Judged = OneOf(
        Leaf.Word("on").Then(Day()).Select<(DateReferenceSyntax, DateReferenceSyntax?)>(day => (day, null)),
        Map<Token, DateReferenceSyntax, DateReferenceSyntax, (DateReferenceSyntax, DateReferenceSyntax?)>(
            (first, last) => (first, last), Leaf.Word("from").Then(Day()), Leaf.Word("to").Then(Day())));

    public static readonly Parser<Token, LineSyntax> Choose = Map<Token, Token, NameSyntax, (ImmutableArray<TextSyntax> Animals, NameSyntax? From), (DateReferenceSyntax First, DateReferenceSyntax? Last), LineSyntax>(
        (start, list, source, judged) => new ChooseLine(list, source.Animals, source.From, judged.First, judged.Last)
        {
            Span = start.Span.To((judged.Last ?? judged.First).Span),
        },
        Leaf.Word("choose"),
        Leaf.ListName("the name of a list, such as `recipients`"),
        Leaf.Word("from").Then(OneOf(
            Animals.Select<(ImmutableArray<TextSyntax>, NameSyntax?)>(animals => (animals, null)),
            Leaf.ListName("`females`, `cows`, `heifers` or another list").Select<(ImmutableArray<TextSyntax>, NameSyntax?)>(name => ([], name)))),
        Leaf.Comma.Then(Leaf.Word("judged")).Then(Judged));

    private static Parser<Token, DateReferenceSyntax> Day() => OneOf(
        Leaf.Date.Select(date => new DateReferenceSyntax(date, null) { Span = date.Span }),
        Leaf.NameUntil("to", "the name of a date").Select(name => new DateReferenceSyntax(null, name) { Span = name.Span }));
}
