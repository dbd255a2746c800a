using Pidgin;
using static Pidgin.Parser;

namespace Byrelaw.Language.Grammar;

/// <summary>Lines inside <c>records</c> and <c>programme</c>.</summary>
internal static class FarmLines
{
    public static readonly Parser<Token, LineSyntax> UpTo = Map<Token, Token, DateSyntax, LineSyntax>(
        (start, day) => new UpToLine(day) { Span = start.Span.To(day.Span) }, Leaf.Word("up"), Leaf.Word("to").Then(Leaf.Date));

    public static readonly Parser<Token, LineSyntax> CompleteFor = Map<Token, Token, ImmutableArray<NameSyntax>, DateSyntax, Maybe<DateSyntax>, LineSyntax>(
        (start, kinds, since, until) => new CompleteForLine(kinds, since, until.GetValueOrDefault())
        {
            Span = start.Span.To(until.HasValue ? until.Value.Span : since.Span),
        },
        Leaf.Word("complete"), Leaf.Word("for").Then(Lists.Names("an event, measure or test")), Leaf.Word("since").Then(Leaf.Date),
        Leaf.Word("until", "`until` and the last day").Then(Leaf.Date).Optional());

    public static readonly Parser<Token, LineSyntax> NoneOnFarm = Map<Token, Token, ImmutableArray<NameSyntax>, Token, Maybe<DateSyntax>, LineSyntax>(
        (start, kinds, farm, since) => new NoneOnFarmLine(kinds, since.GetValueOrDefault()) { Span = start.Span.To(since.HasValue ? since.Value.Span : farm.Span) },
        Leaf.Word("no"), Lists.Names("an event, measure or test"), Leaf.Word("on").Then(Leaf.Word("this")).Then(Leaf.Word("farm")),
        Leaf.Word("since", "`since` and a day").Then(Leaf.Date).Optional());

    private static readonly Parser<Token, ImmutableArray<TextSyntax>> Animals = Map(
        (first, more) => ImmutableArray.CreateRange(more.Prepend(first)),
        Leaf.Text("animals' numbers in quotes"), Try(Leaf.Comma.Then(Leaf.Text(""))).Several());

    public static readonly Parser<Token, LineSyntax> SameAnimal = Map<Token, Token, ImmutableArray<TextSyntax>, LineSyntax>(
        (start, animals) => new SameAnimalLine(animals, AreOne: true) { Span = start.Span.To(animals[^1].Span) },
        Leaf.Word("same"), Leaf.Word("animal").Then(Animals));

    public static readonly Parser<Token, LineSyntax> NotTheSameAnimal = Map<Token, Token, ImmutableArray<TextSyntax>, LineSyntax>(
        (start, animals) => new SameAnimalLine(animals, AreOne: false) { Span = start.Span.To(animals[^1].Span) },
        Leaf.Word("not"), Leaf.Word("the").Then(Leaf.Word("same")).Then(Leaf.Word("animal")).Then(Animals));

    public static readonly Parser<Token, LineSyntax> LeaveOut = Map<Token, Token, ImmutableArray<NameSyntax>, Maybe<NameSyntax>, LineSyntax>(
        (start, names, isNot) => new LeaveOutLine(names, isNot.GetValueOrDefault()) { Span = start.Span.To(isNot.HasValue ? isNot.Value.Span : names[^1].Span) },
        Leaf.Word("leave"), Leaf.Word("out").Then(Lists.Of(Leaf.NameUntil("which", "a kind of record"), Try(Leaf.Comma.Before(Not(Leaf.Word("which")))))),
        Leaf.Comma.Labelled("`, which is not` and a kind").Then(Leaf.Word("which")).Then(OneOf(Leaf.Word("is"), Leaf.Word("are")))
            .Then(Leaf.Word("not")).Then(Leaf.Name("an event, measure or test")).Optional());

    public static readonly Parser<Token, LineSyntax> BlankOf = Map<Token, NameSyntax, Maybe<NameSyntax>, NameSyntax, LineSyntax>(
        (detail, kind, value) => new BlankOfLine(detail, kind.GetValueOrDefault(), value) { Span = detail.Span.To(value.Span) },
        Leaf.OneWord(token => token.IsNamePart, FilterClauses.Detail), Leaf.Word("of", "`of` and a kind").Then(Leaf.Name("an event, measure or test")).Optional(),
        Leaf.Word("is").Then(Leaf.Name(FilterClauses.Value)));

    private static readonly Parser<Token, (NumberSyntax Times, DurationSyntax Every)> Times = Map(
        (times, every) => (times, every),
        Leaf.Number, OneOf(Leaf.Word("times"), Leaf.Word("time", "")).Then(Leaf.Word("every")).Then(Leaf.Duration));

    private static readonly Parser<Token, (ImmutableArray<DateSyntax> Days, (NumberSyntax Times, DurationSyntax Every)? Times)> CollectionDays = Map(
        (first, more) =>
        {
            var rest = more.ToList();
            return (ImmutableArray.CreateRange(rest.Select(item => item.Day).OfType<DateSyntax>().Prepend(first)), rest.FindLast(item => item.Times is not null).Times);
        },
        Leaf.Date, MoreDays().Several());

    private static readonly Parser<Token, ((DateSyntax From, DateSyntax To) Between, (NumberSyntax Times, DurationSyntax Every)? Times)> OnAVisit = Map(
        (from, to, times) => ((from, to), times.HasValue ? times.Value : ((NumberSyntax, DurationSyntax)?)null),
        Leaf.Word("a", "`a visit between`").Then(Leaf.Word("visit")).Then(Leaf.Word("between")).Then(Leaf.Date), Leaf.Word("and").Then(Leaf.Date),
        Leaf.Comma.Labelled("`, 3 times every 14 days`").Then(Times).Optional());

    public static readonly Parser<Token, LineSyntax> Collection = Map(
        (start, finish) => finish(start.Span),
        Leaf.Word("collection"),
        Leaf.Word("on").Then(OneOf(
            CollectionDays.Select<Func<SourceSpan, LineSyntax>>(said => start => new CollectionLine(said.Days, null, said.Times?.Times, said.Times?.Every)
            {
                Span = start.To(said.Times?.Every.Span ?? said.Days[^1].Span),
            }),
            OnAVisit.Select<Func<SourceSpan, LineSyntax>>(said => start => new CollectionLine([], said.Between, said.Times?.Times, said.Times?.Every)
            {
                Span = start.To(said.Times?.Every.Span ?? said.Between.To.Span),
            }))));

    public static readonly Parser<Token, LineSyntax> Transfer = Map<Token, Token, DayReferenceSyntax, Maybe<DurationSyntax>, LineSyntax>(
        (start, first, over) => new TransferLine(first, over.GetValueOrDefault()) { Span = start.Span.To(over.HasValue ? over.Value.Span : first.Span) },
        Leaf.Word("transfer"), DayClauses.Reference, Leaf.Comma.Labelled("`, over N days`").Then(Leaf.Word("over")).Then(Leaf.Duration).Optional());

    public static readonly Parser<Token, LineSyntax> Date = Map<Token, Token, NameSyntax, DayReferenceSyntax, LineSyntax>(
        (start, name, day) => new DateLine(name, day) { Span = start.Span.To(day.Span) },
        Leaf.Word("date"), Leaf.DeclaredName("a name for the date"), DayClauses.DateOrReckoned);

    private static readonly Parser<Token, (DateReferenceSyntax First, DateReferenceSyntax? Last)> Judged = OneOf(
        Leaf.Word("on").Then(Day()).Select<(DateReferenceSyntax, DateReferenceSyntax?)>(day => (day, null)),
        Map<Token, DateReferenceSyntax, DateReferenceSyntax, (DateReferenceSyntax, DateReferenceSyntax?)>(
            (first, last) => (first, last), Leaf.Word("from").Then(Day()), Leaf.Word("to").Then(Day())));

    private static readonly Parser<Token, ListUseSyntax> Use = OneOf(
        Map(
            (first, last) => new ListUseSyntax(ListUse.NothingGiven) { Span = first.Span.To(last.Span) },
            Leaf.Word("nothing", "`nothing given`"), Leaf.Word("given")),
        Map(
            (first, _, last) => new ListUseSyntax(ListUse.ForLookingOnly) { Span = first.Span.To(last.Span) },
            Leaf.Word("for", "`for looking only`"), Leaf.Word("looking"), Leaf.Word("only")));

    public static readonly Parser<Token, LineSyntax> Choose = Map<Token, Token, NameSyntax, (ImmutableArray<TextSyntax> Animals, NameSyntax? From), (DateReferenceSyntax First, DateReferenceSyntax? Last), Maybe<ListUseSyntax>, LineSyntax>(
        (start, list, source, judged, use) => new ChooseLine(list, source.Animals, source.From, judged.First, judged.Last, use.GetValueOrDefault())
        {
            Span = start.Span.To(use.HasValue ? use.Value.Span : (judged.Last ?? judged.First).Span),
        },
        Leaf.Word("choose"),
        Leaf.ListName("the name of a list, such as `recipients`"),
        Leaf.Word("from").Then(OneOf(
            Animals.Select<(ImmutableArray<TextSyntax>, NameSyntax?)>(animals => (animals, null)),
            Leaf.ListName("`females`, `cows`, `heifers` or another list").Select<(ImmutableArray<TextSyntax>, NameSyntax?)>(name => ([], name)))),
        Leaf.Comma.Then(Leaf.Word("judged")).Then(Judged),
        Leaf.Comma.Labelled("`, for looking only`").Then(Use).Optional());

    private static Parser<Token, DateReferenceSyntax> Day() => OneOf(
        Leaf.Date.Select(date => new DateReferenceSyntax(date, null) { Span = date.Span }),
        Leaf.NameUntil("to", "the name of a date").Select(name => new DateReferenceSyntax(null, name) { Span = name.Span }));

    private static Parser<Token, (DateSyntax? Day, (NumberSyntax Times, DurationSyntax Every)? Times)> MoreDays() => Leaf.Comma.Then(OneOf(
        Leaf.Date.Select<(DateSyntax?, (NumberSyntax, DurationSyntax)?)>(day => (day, null)),
        Times.Select<(DateSyntax?, (NumberSyntax, DurationSyntax)?)>(times => (null, times))));
}
