using Pidgin;
using static Pidgin.Parser;

namespace Byrelaw.Language.Grammar;

/// <summary><c>from "diary.csv"</c>, and the lines below it.</summary>
internal static class SourceLines
{
    // Above the parsers: they are made from it, in the order in which they stand.
    private static readonly FrozenDictionary<string, char> Separators =
        new Dictionary<string, char> { ["commas"] = ',', ["semicolons"] = ';', ["tabs"] = '\t', ["bars"] = '|' }.ToFrozenDictionary();

    private const string ValueOfRow = "a value, such as `F`";
    private const string Heading = "a column's heading in quotes";
    private const string WholeCell = "the text of a cell in quotes";
    private const string What = "a column such as `animal`, a fact, a kind of record or a detail";

    private static readonly Parser<Token, FromOptionSyntax> Headings = Map(
        (start, finish) => finish(start.Span),
        Leaf.Word("headings"),
        Leaf.Word("in").Then(OneOf(
            Leaf.Word("row").Then(Leaf.Number).Select<Func<SourceSpan, FromOptionSyntax>>(row => start => new HeadingsSyntax(row, null) { Span = start.To(row.Span) }),
            Map<Token, NumberSyntax, NumberSyntax, Func<SourceSpan, FromOptionSyntax>>(
                (first, last) => start => new HeadingsSyntax(first, last) { Span = start.To(last.Span) },
                Leaf.Word("rows").Then(Leaf.Number), Leaf.Word("to").Then(Leaf.Number)))));

    private static readonly Parser<Token, FromOptionSyntax> RowForEach = Map<Token, Token, Token, FromOptionSyntax>(
        (start, what) => new RowForEachSyntax(what.Is("animal") ? SourceRows.Animals : SourceRows.Events) { Span = start.Span.To(what.Span) },
        Leaf.Word("a", "`a row for each animal`"), Leaf.Word("row").Then(Leaf.Word("for")).Then(Leaf.Word("each")).Then(OneOf(Leaf.Word("animal"), Leaf.Word("event"))));

    private static readonly Parser<Token, FromOptionSyntax> AsAtOrLayout = Map(
        (start, finish) => finish(start.Span),
        Leaf.Word("as", "`as at` and a day"),
        OneOf(
            Leaf.Word("at").Then(Leaf.Date).Select<Func<SourceSpan, FromOptionSyntax>>(day => start => new AsAtSyntax(day) { Span = start.To(day.Span) }),
            Leaf.Word("layout").Then(Leaf.Text("a layout's name in quotes")).Select<Func<SourceSpan, FromOptionSyntax>>(name => start => new LayoutSyntax(name) { Span = start.To(name.Span) })));

    private static readonly Parser<Token, FromOptionSyntax> TimesIn = Map<Token, Token, TextSyntax, FromOptionSyntax>(
        (start, zone) => new TimesInSyntax(zone) { Span = start.Span.To(zone.Span) }, Leaf.Word("times"), Leaf.Word("in").Then(Leaf.Text("a time zone in quotes, such as \"Pacific/Auckland\"")));

    private static readonly Parser<Token, FromOptionSyntax> UpTo = Map<Token, Token, DateSyntax, FromOptionSyntax>(
        (start, day) => new SourceUpToSyntax(day) { Span = start.Span.To(day.Span) }, Leaf.Word("up", "`up to` and a day"), Leaf.Word("to").Then(Leaf.Date));

    private static readonly Parser<Token, FromOptionSyntax> Separator = Map<Token, Token, Token, FromOptionSyntax>(
        (start, sign) => new SeparatorSyntax(Separators[sign.Folded]) { Span = start.Span.To(sign.Span) },
        Leaf.Word("separated"), Leaf.Word("by").Then(OneOf(Separators.Keys.Select(word => Leaf.Word(word)))));

    private static readonly Parser<Token, FromOptionSyntax> Sheet = Map<Token, Token, TextSyntax, FromOptionSyntax>(
        (start, name) => new SheetSyntax(name) { Span = start.Span.To(name.Span) }, Leaf.Word("sheet", "`sheet` and its name"), Leaf.Text("a sheet's name in quotes"));

    private static readonly Parser<Token, FromOptionSyntax> Encoding = Map<Token, Token, NameSyntax, FromOptionSyntax>(
        (start, name) => new EncodingSyntax(name) { Span = start.Span.To(name.Span) },
        Leaf.Word("in", ""), Leaf.OneWord(token => token.IsNamePart && token.Kind != TokenKind.Text, "how letters are written, such as `Windows-1252`"));

    public static readonly Parser<Token, LineSyntax> From = Map<Token, Token, TextSyntax, ImmutableArray<FromOptionSyntax>, LineSyntax>(
        (start, file, options) => new FromLine(file, options) { Span = start.Span.To(options.IsEmpty ? file.Span : options[^1].Span) },
        Leaf.Word("from"), Leaf.Text("a file's name in quotes"),
        Leaf.Comma.Then(OneOf(RowForEach, Sheet, Separator, Headings, AsAtOrLayout, TimesIn, UpTo, Encoding)).Several().Select(ImmutableArray.CreateRange));

    private static readonly Parser<Token, CellClauseSyntax> InUnit = Map<Token, Token, UnitSyntax, CellClauseSyntax>(
        (start, unit) => new InUnitSyntax(unit) { Span = start.Span.To(unit.Span) }, Leaf.Word("in", "`in` and a unit"), Leaf.Unit);

    private static readonly Parser<Token, CellClauseSyntax> Times = Map<Token, Token, NumberSyntax, CellClauseSyntax>(
        (start, factor) => new TimesSyntax(factor) { Span = start.Span.To(factor.Span) }, Leaf.Word("times"), Leaf.Number);

    private static readonly Parser<Token, CellClauseSyntax> Dated = Map(
        (start, finish) => finish(start.Span),
        Leaf.Word("dated"),
        OneOf(
            Leaf.Word("in").Then(Leaf.Text(Heading)).Select<Func<SourceSpan, CellClauseSyntax>>(column => start => new DatedSyntax(column, null) { Span = start.To(column.Span) }),
            Leaf.Date.Select<Func<SourceSpan, CellClauseSyntax>>(day => start => new DatedSyntax(null, day) { Span = start.To(day.Span) })));

    private static readonly Parser<Token, CellClauseSyntax> FoundBy = Map<Token, Token, NameSyntax, CellClauseSyntax>(
        (start, fact) => new FoundBySyntax(fact) { Span = start.Span.To(fact.Span) }, Leaf.Word("by", "`by` and a fact"), Leaf.Name("a fact"));

    private static readonly Parser<Token, CellClauseSyntax> CellAsAt = Map<Token, Token, DateSyntax, CellClauseSyntax>(
        (start, day) => new CellAsAtSyntax(day) { Span = start.Span.To(day.Span) }, Leaf.Word("as", "`as at` and a day"), Leaf.Word("at").Then(Leaf.Date));

    private static readonly Parser<Token, CellClauseSyntax> BlankIs = Map(
        (start, finish) => finish(start.Span),
        Leaf.Word("blank", "`blank is never`").Before(Leaf.Word("is")),
        OneOf(
            Leaf.Word("never").Select<Func<SourceSpan, CellClauseSyntax>>(never => start => new BlankIsSyntax(null) { Span = start.To(never.Span) }),
            Leaf.Word("none").Then(Leaf.Word("since")).Then(Leaf.Word("last")).Then(Leaf.Name("an event"))
                .Select<Func<SourceSpan, CellClauseSyntax>>(kind => start => new BlankIsSyntax(kind) { Span = start.To(kind.Span) })));

    /// <summary>What a line speaks of; two columns of the landed files have words of the language in their names.</summary>
    private static readonly Parser<Token, NameSyntax> WhatItIs = OneOf(
        Leaf.Word("recorded", "").Select(word => NameSyntax.Of(word, [])),
        Map(
            (name, on) => on.HasValue ? new NameSyntax($"{name.Text} {on.Value.Text}") { Span = name.Span.To(on.Value.Span) } : name,
            Leaf.Name(What), Leaf.Word("on", "").Optional()));

    private static readonly Parser<Token, (Token? Last, NameSyntax What, NameSyntax? Of)> Named = Map(
        (last, what, of) => (last.HasValue ? last.Value : null, what, (NameSyntax?)of.GetValueOrDefault()),
        Leaf.Word("last", "").Optional(), WhatItIs, Leaf.Word("of", "").Then(Leaf.Name("an event, measure or test")).Optional());

    /// <summary><c>parity in "Lact"</c> or <c>sex is F</c>.</summary>
    public static readonly Parser<Token, LineSyntax> Column = Map(
        (named, finish) => finish(named.What, named.Of) is ColumnLine line && named.Last is { } last
            ? line with { Last = last.Span, Span = last.Span.To(line.Span) }
            : named.Last is null ? finish(named.What, named.Of) : finish(NameSyntax.Of(named.Last, []), named.Of),
        Named,
        OneOf(
            Map<Token, TextSyntax, ImmutableArray<CellClauseSyntax>, Func<NameSyntax, NameSyntax?, LineSyntax>>(
                (heading, clauses) => (what, of) => new ColumnLine(what, of, heading, clauses)
                {
                    Span = what.Span.To(clauses.IsEmpty ? heading.Span : clauses[^1].Span),
                },
                Leaf.Word("in").Then(Leaf.Text(Heading)),
                Leaf.Comma.Then(OneOf(InUnit, Times, Dated, FoundBy, CellAsAt, BlankIs)).Several().Select(ImmutableArray.CreateRange)),
            Leaf.Word("is").Then(Leaf.Name(ValueOfRow)).Select<Func<NameSyntax, NameSyntax?, LineSyntax>>(
                value => (what, of) => new EveryRowLine(what, of, value) { Span = what.Span.To(value.Span) })));

    public static readonly Parser<Token, LineSyntax> Dates = Map<Token, Token, Token, Token, LineSyntax>(
        (start, order, end) => new DateOrderLine(order.Is("day") ? DateOrder.DayFirst : order.Is("month") ? DateOrder.MonthFirst : DateOrder.YearFirst) { Span = start.Span.To(end.Span) },
        Leaf.Word("dates"), OneOf(Leaf.Word("day"), Leaf.Word("month"), Leaf.Word("year")), Leaf.Word("first"));

    public static readonly Parser<Token, LineSyntax> DecimalComma = Map<Token, Token, Token, LineSyntax>(
        (start, end) => new DecimalCommaLine { Span = start.Span.To(end.Span) }, Leaf.Word("decimal"), Leaf.Word("comma"));

    public static readonly Parser<Token, LineSyntax> Thousands = Leaf.Word("thousands").Then(
        OneOf(Leaf.Word("comma"), Leaf.Word("point")), LineSyntax (start, sign) => new ThousandsLine(sign.Is("comma") ? ',' : '.') { Span = start.Span.To(sign.Span) });

    public static readonly Parser<Token, LineSyntax> ShortYears = Map<Token, Token, Token, LineSyntax>(
        (start, end) => new ShortYearsLine { Span = start.Span.To(end.Span) }, Leaf.Word("short"), Leaf.Word("years"));

    /// <summary><c>leave out rows where "State" is "cancelled"</c>, <c>leave out columns "A", "B"</c>.</summary>
    public static readonly Parser<Token, LineSyntax> LeaveOut = Map(
        (start, finish) => finish(start.Span),
        Leaf.Word("leave"),
        Leaf.Word("out").Then(OneOf(
            Map<Token, TextSyntax, TextSyntax, Func<SourceSpan, LineSyntax>>(
                (heading, cell) => start => new LeaveOutRowsLine(heading, cell) { Span = start.To(cell.Span) },
                Leaf.Word("rows").Then(Leaf.Word("where")).Then(Leaf.Text(Heading)), Leaf.Word("is").Then(Leaf.Text(WholeCell))),
            Leaf.Word("columns").Then(Lists.Of(Leaf.Text(Heading), Leaf.Comma)).Select<Func<SourceSpan, LineSyntax>>(
                headings => start => new LeaveOutColumnsLine(headings) { Span = start.To(headings[^1].Span) }))));

    private static readonly Parser<Token, CellMeaningSyntax> Meaning = OneOf(
        Map<Token, Token, NumberSyntax, CellMeaningSyntax>(
            (start, limit) => new CellLimitSyntax(start.Is("less"), limit) { Span = start.Span.To(limit.Span) },
            OneOf(Leaf.Word("less"), Leaf.Word("more")), Leaf.Word("than").Then(Leaf.Number)),
        Leaf.Name("what it means: a kind, an answer, a value, `pending`, `blank` or `left out`")
            .Select<CellMeaningSyntax>(name => new CellNameSyntax(name) { Span = name.Span }));

    private static readonly Parser<Token, CellClauseSyntax> Part = Map<Token, NameSyntax, Maybe<(TextSyntax? Heading, NameSyntax? Value)>, CellClauseSyntax>(
        (what, said) =>
        {
            var (heading, value) = said.GetValueOrDefault();
            return new CellPartSyntax(what, heading, value) { Span = what.Span.To(heading?.Span ?? value?.Span ?? what.Span) };
        },
        Leaf.Name("`value` or a detail, or an answer"),
        OneOf(
            Leaf.Word("in").Then(Leaf.Text(Heading)).Select<(TextSyntax?, NameSyntax?)>(heading => (heading, null)),
            Leaf.Word("is").Then(Leaf.Name(FilterClauses.Value)).Select<(TextSyntax?, NameSyntax?)>(value => (null, value))).Optional());

    /// <summary>What a text of the column above means.</summary>
    public static readonly Parser<Token, LineSyntax> Cell = Map<Token, Token, TextSyntax, Maybe<(TextSyntax Heading, TextSyntax Cell)>, CellMeaningSyntax, ImmutableArray<CellClauseSyntax>, LineSyntax>(
        (bullet, cell, where, meaning, clauses) => new CellLine(cell, where.GetValueOrDefault().Heading, where.GetValueOrDefault().Cell, meaning, clauses)
        {
            Span = bullet.Span.To(clauses.IsEmpty ? meaning.Span : clauses[^1].Span),
        },
        Leaf.Bullet, Leaf.Text(WholeCell),
        Map((heading, text) => (heading, text), Leaf.Word("where", "").Then(Leaf.Text(Heading)), Leaf.Word("is").Then(Leaf.Text(WholeCell))).Optional(),
        Leaf.Word("is").Then(Meaning),
        Leaf.Comma.Then(OneOf(InUnit, Times, Part)).Several().Select(ImmutableArray.CreateRange));
}
