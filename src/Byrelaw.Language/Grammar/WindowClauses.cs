using Pidgin;
using static Pidgin.Parser;

namespace Byrelaw.Language.Grammar;

/// <summary>What may follow a condition's subject and starts with <c>in</c>, <c>since</c>, <c>from</c> or <c>ever</c>.</summary>
internal static class WindowClauses
{
    /// <summary>What a reader is told to expect where a window may stand.</summary>
    public const string Label = "a window such as `in the last 30 days`";

    public static readonly Parser<Token, ImmutableArray<NameSyntax>> LastKinds =
        Leaf.Word("last").Then(Lists.Kinds("what happened, such as `calving`"));

    public static readonly Parser<Token, DateReferenceSyntax> DateReference = OneOf(
        Leaf.Date.Select(date => new DateReferenceSyntax(date, null) { Span = date.Span }),
        Leaf.Name("the name of a date").Select(name => new DateReferenceSyntax(null, name) { Span = name.Span }));

    /// <summary><c>2026-10-12</c>, <c>first transfer</c>, <c>last calving</c>.</summary>
    private static readonly Parser<Token, WindowDaySyntax> Day = OneOf(
        Leaf.Date.Select(date => new WindowDaySyntax(date, [], false) { Span = date.Span }),
        LastKinds.Select(kinds => new WindowDaySyntax(null, kinds, true) { Span = kinds[0].Span.To(kinds[^1].Span) }),
        Lists.Kinds("the name of a date").Select(names => new WindowDaySyntax(null, names, false) { Span = names[0].Span.To(names[^1].Span) }));

    private static readonly Parser<Token, (HerdGroup Group, SourceSpan Span)> Whom = Leaf.Word("of").Then(OneOf(
        Leaf.Word("the", "`the herd`").Then(Leaf.Word("herd")).Select(token => (HerdGroup.Herd, token.Span)),
        Leaf.Word("cows").Select(token => (HerdGroup.Cows, token.Span)),
        Leaf.Word("heifers").Select(token => (HerdGroup.Heifers, token.Span))));

    /// <summary><c>of cows</c>, <c>of the herd with a value</c>.</summary>
    private static readonly Parser<Token, (HerdGroup Group, bool WithValue, SourceSpan Span)> Group = Map(
        (whom, value) => (whom.Group, value.HasValue, value.HasValue ? whom.Span.To(value.Value.Span) : whom.Span),
        Whom, Leaf.Word("with", "`with a value`").Then(Leaf.Word("a")).Then(Leaf.Word("value")).Optional());

    /// <summary><c>last N days</c>, <c>N days before DATE</c>, <c>N days after DAY</c> or <c>top P% of the herd</c>, after <c>in the</c>.</summary>
    private static readonly Parser<Token, Func<SourceSpan, TailSyntax>> AfterInThe = OneOf(
        Leaf.Word("last").Then(Leaf.Duration).Select<Func<SourceSpan, TailSyntax>>(
            length => start => new InTheLastSyntax(length) { Span = start.To(length.Span) }),
        Map<Token, DurationSyntax, Func<DurationSyntax, SourceSpan, TailSyntax>, Func<SourceSpan, TailSyntax>>(
            (length, finish) => start => finish(length, start),
            Leaf.Duration, OneOf(
                Leaf.Word("before").Then(DateReference).Select<Func<DurationSyntax, SourceSpan, TailSyntax>>(
                    date => (length, start) => new BeforeDateSyntax(length, date) { Span = start.To(date.Span) }),
                Leaf.Word("after").Then(Day).Select<Func<DurationSyntax, SourceSpan, TailSyntax>>(
                    day => (length, start) => new DaysAfterSyntax(length, day) { Span = start.To(day.Span) }))),
        Leaf.Word("top").Then(Map<Token, NumberSyntax, (HerdGroup Group, bool WithValue, SourceSpan Span), Func<SourceSpan, TailSyntax>>(
            (percent, group) => start => new TopSyntax(false, percent, group.Group, group.WithValue) { Span = start.To(group.Span) },
            Leaf.Percent, Group)));

    public static readonly Parser<Token, TailSyntax> InThe = Map(
        (start, finish) => finish(start.Span), Leaf.Word("in", Label), Leaf.Word("the").Then(AfterInThe));

    public static readonly Parser<Token, TailSyntax> NotInTheTop = Map<Token, Token, NumberSyntax, (HerdGroup Group, bool WithValue, SourceSpan Span), TailSyntax>(
        (start, percent, group) => new TopSyntax(true, percent, group.Group, group.WithValue) { Span = start.Span.To(group.Span) },
        Leaf.Word("not", ""),
        Leaf.Word("in").Then(Leaf.Word("the")).Then(Leaf.Word("top")).Then(Leaf.Percent),
        Group);

    public static readonly Parser<Token, TailSyntax> Since = Map(
        (start, finish) => finish(start.Span),
        Leaf.Word("since", Label),
        OneOf(
            LastKinds.Select<Func<SourceSpan, TailSyntax>>(kinds => start => new SinceLastSyntax(kinds) { Span = start.To(kinds[^1].Span) }),
            Leaf.Date.Select<Func<SourceSpan, TailSyntax>>(
                date => start => new SinceDateSyntax(new DateReferenceSyntax(date, null) { Span = date.Span }) { Span = start.To(date.Span) }),
            Lists.Kinds("the name of a date").Select<Func<SourceSpan, TailSyntax>>(names => start => SinceNames(start, names))));

    /// <summary><c>since calving or abortion</c> can only speak of events; <c>since collection</c> may speak of a date.</summary>
    private static WindowSyntax SinceNames(SourceSpan start, ImmutableArray<NameSyntax> names) => names is [{ Filters.IsEmpty: true } only]
        ? new SinceDateSyntax(new DateReferenceSyntax(null, only) { Span = only.Span }) { Span = start.To(only.Span) }
        : new SinceLastSyntax(names) { Span = start.To(names[^1].Span) };

    /// <summary><c>day 28 of last transfer</c>.</summary>
    public static readonly Parser<Token, (DurationSyntax Day, ImmutableArray<NameSyntax> Kinds)> DayOfLast = Map(
        (number, kinds) => (new DurationSyntax(number, TimeUnit.Days) { Span = number.Span }, kinds),
        Leaf.Word("day", "").Then(Leaf.Number), Leaf.Word("of").Then(LastKinds));

    public static readonly Parser<Token, TailSyntax> From = Map(
        (start, finish) => finish(start.Span),
        Leaf.Word("from", Label),
        OneOf(
            Map<Token, DurationSyntax, ImmutableArray<NameSyntax>, Func<SourceSpan, TailSyntax>>(
                (wait, kinds) => start => new FromAfterLastSyntax(wait, kinds) { Span = start.To(kinds[^1].Span) },
                Leaf.Duration, Leaf.Word("after").Then(LastKinds)),
            DayOfLast.Select<Func<SourceSpan, TailSyntax>>(
                day => start => new FromAfterLastSyntax(day.Day, day.Kinds) { IsDayOf = true, Span = start.To(day.Kinds[^1].Span) }),
            Map<Token, NumberSyntax, Token, Func<SourceSpan, TailSyntax>>(
                (count, animals) => start => new FromAnimalsSyntax(count) { Span = start.To(animals.Span) },
                Leaf.Word("at", "`at least N animals`").Then(Leaf.Word("least")).Then(Leaf.Number),
                OneOf(Leaf.Word("animals"), Leaf.Word("animal", "")))));

    public static readonly Parser<Token, TailSyntax> Before = Map<Token, Token, WindowDaySyntax, TailSyntax>(
        (start, day) => new BeforeDaySyntax(day) { Span = start.Span.To(day.Span) }, Leaf.Word("before", Label), Day);

    public static readonly Parser<Token, TailSyntax> Ever =
        Leaf.Word("ever", Label).Select<TailSyntax>(token => new EverSyntax { Span = token.Span });
}
