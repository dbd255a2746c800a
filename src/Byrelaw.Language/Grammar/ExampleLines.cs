using Pidgin;
using static Pidgin.Parser;

namespace Byrelaw.Language.Grammar;

/// <summary>Lines inside <c>example</c>, but for what is expected.</summary>
internal static class ExampleLines
{
    private static readonly Parser<Token, (string Text, SourceSpan Span)> Birth = OneOf(
        Leaf.Date.Select(day => (day.Span.Text, day.Span)),
        Leaf.Number.Labelled("a year").Select(year => (year.Span.Text, year.Span)));

    public static readonly Parser<Token, LineSyntax> Animal = Map<Token, Token, Maybe<(string Text, SourceSpan Span)>, LineSyntax>(
        (word, born) => new AnimalLine(SortOf(word), born.HasValue ? born.Value.Text : "") { Span = born.HasValue ? word.Span.To(born.Value.Span) : word.Span },
        OneOf(Leaf.Word("cow"), Leaf.Word("heifer"), Leaf.Word("female"), Leaf.Word("male"), Leaf.Word("animal")),
        Leaf.Word("born", "`born DATE`").Then(Birth).Optional());

    private static readonly Parser<Token, RecordedValueSyntax> Amount = Map<Token, Maybe<string>, NumberSyntax, Maybe<UnitSyntax>, RecordedValueSyntax>(
        (bound, number, unit) => new RecordedValueSyntax(number.Span.Text, true, bound.GetValueOrDefault(""), unit.GetValueOrDefault())
        {
            Span = unit.HasValue ? number.Span.To(unit.Value.Span) : number.Span,
        },
        OneOf(
            Leaf.Word("less").Then(Leaf.Word("than")).Select(_ => "<"),
            Leaf.Word("more").Then(Leaf.Word("than")).Select(_ => ">")).Optional(),
        Leaf.Number, Leaf.Unit.Optional());

    private static readonly Parser<Token, RecordedValueSyntax> Value = OneOf(
        Amount,
        Leaf.Name("a result").Select(words => new RecordedValueSyntax(words.Text, false, "", null) { Span = words.Span }));

    // "1021" of a fact that is text, "breed Jersey": where the name ends only its meaning tells.
    private static readonly Parser<Token, ImmutableArray<NameSyntax>> Words = Map(
        (first, more) => ImmutableArray.CreateRange(more.Prepend(first)),
        Leaf.OneWord(token => token.IsNamePart, "something on record, such as `calving 2026-09-07`"),
        Leaf.OneWord(token => token.IsNamePart, "").Several());

    private static readonly Parser<Token, (bool IsOn, DateSyntax? Day, RecordedValueSyntax? Value)> Rest = OneOf(
        Leaf.Word("on", "").Then(Leaf.Date).Select<(bool, DateSyntax?, RecordedValueSyntax?)>(day => (true, day, null)),
        Map<Token, DateSyntax, Maybe<RecordedValueSyntax>, (bool, DateSyntax?, RecordedValueSyntax?)>(
            (day, value) => (false, day, value.GetValueOrDefault()), Leaf.Date, Value.Optional()),
        Amount.Select<(bool, DateSyntax?, RecordedValueSyntax?)>(value => (false, null, value)));

    private static readonly Parser<Token, RecordedDetailSyntax> Detail = Map(
        (start, detail, value) => new RecordedDetailSyntax(detail, value) { Span = start.Span.To(value.Span) },
        Leaf.Word("with", "`with` and a detail"), Leaf.OneWord(token => token.IsNamePart, FilterClauses.Detail),
        OneOf(
            Amount,
            Leaf.Date.Select(day => new RecordedValueSyntax(day.Span.Text, true, "", null) { Span = day.Span }),
            Leaf.Name(FilterClauses.Value).Select(words => new RecordedValueSyntax(words.Text, false, "", null) { Span = words.Span })));

    public static readonly Parser<Token, LineSyntax> Recorded = Map<Token, ImmutableArray<NameSyntax>, Maybe<((bool IsOn, DateSyntax? Day, RecordedValueSyntax? Value) Main, IEnumerable<RecordedDetailSyntax> Details)>, LineSyntax>(
        (words, said) =>
        {
            var ((isOn, day, value), more) = said.GetValueOrDefault();
            ImmutableArray<RecordedDetailSyntax> details = [.. more ?? []];
            var last = details.IsEmpty ? value?.Span ?? day?.Span ?? words[^1].Span : details[^1].Span;
            return new RecordedLine(words, isOn, day, value) { Details = details, Span = words[0].Span.To(last) };
        },
        Words, Map((rest, details) => (rest, details), Rest, Detail.Several()).Optional());

    public static readonly Parser<Token, LineSyntax> OfHerMob = Map<Token, NumberSyntax, NameSyntax, DateSyntax, RecordedValueSyntax, LineSyntax>(
        (animals, measure, day, value) => new OfHerMobLine(animals, measure, day, value) { Span = animals.Span.To(value.Span) },
        Leaf.Number, Leaf.Word("of").Then(Leaf.Word("her", "`her mob`")).Then(Leaf.Word("mob")).Then(Leaf.Name("a measure")), Leaf.Date, Value);

    public static readonly Parser<Token, LineSyntax> InMob = Map<Token, Token, NameSyntax, DateSyntax, LineSyntax>(
        (start, mob, since) => new InMobLine(mob, since) { Span = start.Span.To(since.Span) },
        Leaf.Word("mob"), Leaf.Name("the mob's name"), Leaf.Word("since").Then(Leaf.Date));

    public static readonly Parser<Token, LineSyntax> Rank = Map<Token, Token, NumberSyntax, NumberSyntax, NameSyntax, LineSyntax>(
        (start, rank, of, fact) => new RankLine(rank, of, fact) { Span = start.Span.To(fact.Span) },
        Leaf.Word("rank"), Leaf.Number, Leaf.Word("of").Then(Leaf.Number), Leaf.Word("by").Then(Leaf.Name("a fact that is a number")));

    public static readonly Parser<Token, LineSyntax> NotKept = Map<Token, Token, ImmutableArray<NameSyntax>, LineSyntax>(
        (start, kinds) => new NotKeptLine(kinds) { Span = start.Span.To(kinds[^1].Span) },
        Leaf.Word("not"), Leaf.Word("kept").Then(Lists.Names("an event, measure or test")));

    public static readonly Parser<Token, LineSyntax> Judged = Map<Token, Token, (DateSyntax First, DateSyntax? Last), LineSyntax>(
        (start, days) => new JudgedLine(days.First, days.Last) { Span = start.Span.To((days.Last ?? days.First).Span) },
        Leaf.Word("judged"),
        OneOf(
            Leaf.Word("on").Then(Leaf.Date).Select<(DateSyntax, DateSyntax?)>(day => (day, null)),
            Map<Token, DateSyntax, DateSyntax, (DateSyntax, DateSyntax?)>(
                (first, last) => (first, last), Leaf.Word("from").Then(Leaf.Date), Leaf.Word("to").Then(Leaf.Date))));

    public static readonly Parser<Token, LineSyntax> RecordsTo = Map<Token, Token, DateSyntax, LineSyntax>(
        (start, day) => new RecordsToLine(day) { Span = start.Span.To(day.Span) }, Leaf.Word("records"), Leaf.Word("to").Then(Leaf.Date));

    private static ExampleSort SortOf(Token word) => word.Folded switch
    {
        "cow" => ExampleSort.Cow,
        "heifer" => ExampleSort.Heifer,
        "female" => ExampleSort.Female,
        "male" => ExampleSort.Male,
        _ => ExampleSort.Animal,
    };
}
