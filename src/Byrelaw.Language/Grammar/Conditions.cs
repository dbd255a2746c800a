using Pidgin;
using static Pidgin.Parser;

namespace Byrelaw.Language.Grammar;

/// <summary>
/// A condition: its subject, then tails in any order. Which tails a subject may have is a matter
/// of what its name means, so it is decided when names are bound.
/// </summary>
internal static class Conditions
{
    private static readonly Parser<Token, TailSyntax> OfSome = Map<Token, Token, Func<SourceSpan, TailSyntax>, TailSyntax>(
        (start, finish) => finish(start.Span),
        Leaf.Word("of", ""), OneOf(
            Leaf.Word("her").Then(Leaf.Word("mob")).Select<Func<SourceSpan, TailSyntax>>(mob => start => new OfHerMobSyntax { Span = start.To(mob.Span) }),
            Map<Token, NumberSyntax, Token, Func<SourceSpan, TailSyntax>>(
                (count, results) => start => new OfTheLastSyntax(count) { Span = start.To(results.Span) },
                Leaf.Word("the", "`the last 3 results`").Then(Leaf.Word("last")).Then(Leaf.Number), Leaf.Word("results"))));

    private static readonly Parser<Token, ImmutableArray<TailSyntax>> Tails =
        Leaf.Comma.Labelled("").Optional().Then(OneOf(
            WindowClauses.InThe, WindowClauses.Since, WindowClauses.From, WindowClauses.Before, WindowClauses.Ever, Comparisons.Compare, Comparisons.Is, WindowClauses.NotInTheTop, OfSome))
        .Several().Select(tails => tails.ToImmutableArray());

    private static readonly Parser<Token, ConditionSyntax> No = Map<Token, Token, ImmutableArray<NameSyntax>, ImmutableArray<TailSyntax>, ConditionSyntax>(
        (no, counted, tails) => new CountSyntax(new CountTestSyntax(Comparison.Exactly, null, null) { Span = no.Span }, counted)
        {
            Span = Cover(no.Span, counted[^1].Span, tails),
            Tails = tails,
        },
        Leaf.Word("no"), Lists.Kinds("what is counted, such as `heat`"), Tails);

    /// <summary><c>of the last 3</c> before the measure, as some say it.</summary>
    private static readonly Parser<Token, TailSyntax> OfTheLastBefore = Leaf.Word("of", "").Then(Leaf.Word("the", "")).Then(Map<Token, Token, NumberSyntax, TailSyntax>(
        (last, count) => new OfTheLastSyntax(count) { Span = last.Span.To(count.Span) }, Leaf.Word("last"), Leaf.Number));

    private static readonly Parser<Token, ConditionSyntax> Result = Map<Token, (Aggregate How, SourceSpan Span), Maybe<TailSyntax>, NameSyntax, ImmutableArray<TailSyntax>, ConditionSyntax>(
        (how, last, name, tails) => new ResultSyntax(how.How, name) { Span = Cover(how.Span, name.Span, tails), Tails = last.HasValue ? tails.Insert(0, last.Value) : tails },
        OneOf(
            Leaf.Word("latest").Select(token => (Aggregate.Latest, token.Span)),
            Leaf.Word("lowest").Select(token => (Aggregate.Lowest, token.Span)),
            Leaf.Word("highest").Select(token => (Aggregate.Highest, token.Span)),
            Leaf.Word("average").Select(token => (Aggregate.Average, token.Span)),
            Leaf.Word("every").Select(token => (Aggregate.Every, token.Span)),
            Map((change, @in) => (Aggregate.Change, change.Span.To(@in.Span)), Leaf.Word("change"), Leaf.Word("in"))),
        OfTheLastBefore.Optional(), FilterClauses.Of(Leaf.Name("a measure or a test")), Tails);

    private static readonly Parser<Token, Func<NameSyntax, ImmutableArray<TailSyntax>, ConditionSyntax>> ByHowMuch =
        Map<Token, Token, (Comparison How, SourceSpan Span), AmountSyntax, Func<NameSyntax, ImmutableArray<TailSyntax>, ConditionSyntax>>(
            (word, demand, amount) => (name, tails) => Change(word, demand.How, demand.Span, amount, name, tails),
            OneOf(Leaf.Word("lost"), Leaf.Word("gained")), Comparisons.OneSided, Comparisons.Amount);

    private static readonly Parser<Token, ConditionSyntax> Changed = Map((finish, name, tails) => finish(name, tails), ByHowMuch, FilterClauses.Of(Leaf.Name("a measure")), Tails);

    private static readonly Parser<Token, ConditionSyntax> Named = Map<Token, NameSyntax, ImmutableArray<TailSyntax>, ConditionSyntax>(
        (name, tails) => new NamedSyntax(name, false) { Span = Cover(name.Span, name.Span, tails), Tails = tails },
        Leaf.Name("a name"), Tails);

    private static readonly Parser<Token, (SourceSpan Start, ImmutableArray<NameSyntax> Mobs)> OfMob = Map(
        (start, mobs) => (start.Span, mobs),
        Leaf.Word("in", ""), Leaf.Word("mob").Then(Lists.Of(Leaf.Name("the name of a mob"), Leaf.Word("or"))));

    private static readonly Parser<Token, ConditionSyntax> InMob = OfMob.Select<ConditionSyntax>(
        found => new InMobSyntax(found.Mobs, false) { Span = found.Start.To(found.Mobs[^1].Span) });

    private static readonly Parser<Token, ConditionSyntax> NotNamed = Map<Token, NameSyntax, ImmutableArray<TailSyntax>, ConditionSyntax>(
        (name, tails) => new NamedSyntax(name, true) { Span = Cover(name.Span, name.Span, tails), Tails = tails },
        Leaf.Name("a defined name or a spell"), Tails);

    private static readonly Parser<Token, ConditionSyntax> Not = Map<Token, Token, ConditionSyntax, ConditionSyntax>(
        (not, what) => what with { Span = not.Span.To(what.Span) },
        Leaf.Word("not"), OneOf(OfMob.Select<ConditionSyntax>(found => new InMobSyntax(found.Mobs, true) { Span = found.Start.To(found.Mobs[^1].Span) }), NotNamed));

    // `any` and `all` are free elsewhere, so a name may start with them; `any of` may not.
    private static readonly Parser<Token, ConditionSyntax> ListHead = Map<Token, (ListKind Kind, SourceSpan Span), Token, ConditionSyntax>(
        (how, of) => new ListHeadSyntax(how.Kind, null) { Span = how.Span.To(of.Span) },
        OneOf(
            Leaf.Word("any", "`any of`").Select(token => (ListKind.AnyOf, token.Span)),
            Leaf.Word("all", "`all of`").Select(token => (ListKind.AllOf, token.Span)),
            Leaf.Word("none", "`none of`").Select(token => (ListKind.NoneOf, token.Span))),
        Leaf.Word("of"));

    /// <summary>One condition; the line's end is left to the caller.</summary>
    public static readonly Parser<Token, ConditionSyntax> Condition =
        OneOf(No, LeadingNumbers.Of(Tails), Result, Changed, Not, InMob, Try(ListHead), Named);

    private static ResultSyntax Change(Token word, Comparison how, SourceSpan at, AmountSyntax amount, NameSyntax name, ImmutableArray<TailSyntax> tails)
    {
        var isLoss = word.Is("lost");
        var limit = isLoss && amount.Value.Value != 0 ? amount with { Value = amount.Value with { Value = -amount.Value.Value } } : amount;
        return new ResultSyntax(Aggregate.Change, name)
        {
            Span = Cover(word.Span, name.Span, tails),
            Tails = [new CompareSyntax(isLoss ? Canonical.LostOrGained.OfALoss(how) : how, limit, null) { Span = at.To(amount.Span) }, .. tails],
            BelowNought = amount.Value.Value < 0 ? amount : null,
        };
    }

    /// <summary>The stretch from a start over a subject and its tails.</summary>
    public static SourceSpan Cover(SourceSpan start, SourceSpan subject, ImmutableArray<TailSyntax> tails) =>
        start.To(tails.IsEmpty ? subject : tails[^1].Span);
}
