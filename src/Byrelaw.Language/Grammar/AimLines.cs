using Pidgin;
using static Pidgin.Parser;

namespace Byrelaw.Language.Grammar;

/// <summary>Lines inside <c>programme</c> that say what it is for and what its plan is made from.</summary>
internal static class AimLines
{
    private static readonly Parser<Token, Outcome> What = OneOf(
        Leaf.Word("live", "`live heifer calves`").Then(OneOf(
            OneOf(Leaf.Word("heifer"), Leaf.Word("heifers", "")).Then(Calves()).ThenReturn(Outcome.LiveHeiferCalves), Calves().ThenReturn(Outcome.LiveCalves))),
        OneOf(Leaf.Word("pregnancies"), Leaf.Word("pregnancy", "")).ThenReturn(Outcome.Pregnancies),
        OneOf(Leaf.Word("embryos", "`embryos transferred`"), Leaf.Word("embryo", "")).Then(Leaf.Word("transferred")).ThenReturn(Outcome.EmbryosTransferred));

    public static readonly Parser<Token, LineSyntax> Wants = Map<Token, Token, NumberSyntax, Outcome, NumberSyntax, Token, LineSyntax>(
        (start, count, what, sure, end) => new WantsLine(count, what, sure) { Span = start.Span.To(end.Span) },
        Leaf.Word("wants"), Leaf.Number, What, Leaf.Comma.Then(Leaf.Percent), Leaf.Word("sure"));

    public static readonly Parser<Token, LineSyntax> Budget = Map<Token, Token, Syntax.Plans.MoneySyntax, LineSyntax>(
        (start, amount) => new BudgetLine(amount) { Span = start.Span.To(amount.Span) }, Leaf.Word("budget"), EvidenceClauses.Money);

    public static readonly Parser<Token, LineSyntax> Embryos = Map<Token, Token, (EmbryoOrigin Origin, Token Token), Maybe<(DurationSyntax Age, Token Old)>, LineSyntax>(
        (start, from, age) => new EmbryosLine(from.Origin, age.HasValue ? age.Value.Age : null) { Span = start.Span.To(age.HasValue ? age.Value.Old.Span : from.Token.Span) },
        Leaf.Word("embryos"),
        OneOf(
            Leaf.Word("made", "`made from collected eggs`").Then(Leaf.Word("from")).Then(Leaf.Word("collected")).Then(Leaf.Word("eggs")).Select(token => (EmbryoOrigin.CollectedEggs, token)),
            Leaf.Word("flushed").Select(token => (EmbryoOrigin.Flushed, token)),
            Leaf.Word("frozen").Select(token => (EmbryoOrigin.Frozen, token))),
        Leaf.Comma.Labelled("`, 7 days old`").Then(Map((age, old) => (age, old), Leaf.Duration, Leaf.Word("old"))).Optional());

    public static readonly Parser<Token, LineSyntax> Tank = Map<Token, Token, NumberSyntax, Token, Maybe<Token>, LineSyntax>(
        (start, count, end, sexed) => new TankLine(count, sexed.HasValue) { Span = start.Span.To((sexed.HasValue ? sexed.Value : end).Span) },
        Leaf.Word("tank"), Leaf.Word("holds").Then(Leaf.Number), Leaf.Word("frozen").Then(OneOf(Leaf.Word("embryos"), Leaf.Word("embryo", ""))),
        Leaf.Word("with", "`with sexed semen`").Then(Leaf.Word("sexed")).Then(Leaf.Word("semen")).Optional());

    // Whose money: all costs, or those of one kind.
    private static readonly Parser<Token, ImmutableArray<(TextSyntax Who, NumberSyntax Percent)>> Shares = Leaf.Word("costs", "").Then(Leaf.Word("shared"))
        .Then(Lists.Of(Map((who, percent) => (who, percent), Leaf.Text("who pays, in quotes"), Leaf.Percent), Leaf.Comma));

    public static readonly Parser<Token, LineSyntax> CostsShared = Map<Token, Token, ImmutableArray<(TextSyntax Who, NumberSyntax Percent)>, LineSyntax>(
        (start, shares) => new CostsSharedLine(null, shares) { Span = start.Span.To(shares[^1].Percent.Span) }, Lookahead(Leaf.Word("costs")), Shares);

    public static readonly Parser<Token, LineSyntax> TreatmentCostsShared = CostsOf("treatment", SharedCosts.Treatments);

    public static readonly Parser<Token, LineSyntax> TransferCostsShared = CostsOf("transfer", SharedCosts.Transfers);

    private static readonly Parser<Token, (DurationSyntax Within, Token End)> Within = Leaf.Comma.Labelled("`, within 1 day of the embryo`").Then(Leaf.Word("within")).Then(
        Map((within, end) => (within, end), Leaf.Duration, Leaf.Word("of").Then(Leaf.Word("the")).Then(Leaf.Word("embryo"))));

    public static readonly Parser<Token, LineSyntax> RecipientDays = Map<Token, Token, NumberSyntax, Maybe<NumberSyntax>, Maybe<(DurationSyntax Within, Token End)>, LineSyntax>(
        (start, from, to, within) => new RecipientDaysLine(from, to.GetValueOrDefault(), within.HasValue ? within.Value.Within : null)
        {
            Span = start.Span.To(within.HasValue ? within.Value.End.Span : to.HasValue ? to.Value.Span : from.Span),
        },
        Leaf.Word("recipients"), Leaf.Word("on").Then(Leaf.Word("day")).Then(Leaf.Number), Leaf.Word("to").Then(Leaf.Number).Optional(), Within.Optional());

    // Numbers in quotes are animals that are booked; else it says how many, or whom, and by what.
    public static readonly Parser<Token, LineSyntax> Prepare = Map(
        (start, finish) => finish(start),
        Leaf.Word("prepare"),
        OneOf(
            Map<Token, ImmutableArray<TextSyntax>, TextSyntax, Maybe<NumberSyntax>, Func<Token, LineSyntax>>(
                (animals, method, session) => start => new BookingLine(animals, method, session.GetValueOrDefault())
                {
                    Span = start.Span.To(session.HasValue ? session.Value.Span : method.Span),
                },
                Lists.Of(Leaf.Text("an animal's number in quotes"), Leaf.Comma), Leaf.Word("by").Then(Leaf.Text("a method's name in quotes")),
                Leaf.Word("for", "`for session 2`").Then(Leaf.Word("session")).Then(Leaf.Number).Optional()),
            Map<Token, Maybe<NumberSyntax>, Token, ImmutableArray<TextSyntax>, Func<Token, LineSyntax>>(
                (count, whom, methods) => start => new PrepareLine(count.GetValueOrDefault(), whom.Is("donors"), methods) { Span = start.Span.To(methods[^1].Span) },
                Leaf.Number.Optional(), OneOf(Leaf.Word("recipients"), Leaf.Word("donors"), Leaf.Word("recipient", "")),
                Leaf.Word("by").Then(Lists.Of(Leaf.Text("a method's name in quotes"), Leaf.Comma)))));

    public static readonly Parser<Token, LineSyntax> SemenUsed = Map(
        (start, finish) => finish(start),
        Leaf.Word("semen"),
        OneOf(
            Leaf.Word("sexed", "`sexed female`").Then(OneOf(
                Leaf.Word("female").Select(token => Used(Semen.SexedFemale, token)), Leaf.Word("male").Select(token => Used(Semen.SexedMale, token)))),
            Leaf.Word("unsexed").Select(token => Used(Semen.Unsexed, token)),
            Shares.Select<Func<Token, LineSyntax>>(shares => start => new CostsSharedLine(SharedCosts.Semen, shares) { Span = start.Span.To(shares[^1].Percent.Span) })));

    public static readonly Parser<Token, LineSyntax> CalfBreeds = Map<Token, Token, ImmutableArray<NameSyntax>, LineSyntax>(
        (start, breeds) => new CalvesLine(breeds) { Span = start.Span.To(breeds[^1].Span) },
        Leaf.Word("calves"), Leaf.Word("of").Then(Leaf.Word("breed")).Then(Lists.Names("a breed")));

    public static readonly Parser<Token, LineSyntax> CalveBy = Map<Token, Token, DateSyntax, LineSyntax>(
        (start, day) => new CalveByLine(day) { Span = start.Span.To(day.Span) }, Leaf.Word("calve"), Leaf.Word("by").Then(Leaf.Date));

    public static readonly Parser<Token, LineSyntax> Region = Map<Token, Token, TextSyntax, LineSyntax>(
        (start, region) => new RegionLine(region) { Span = start.Span.To(region.Span) }, Leaf.Word("region"), Leaf.Text("a region in quotes"));

    public static readonly Parser<Token, LineSyntax> Holidays = Map<Token, Token, TextSyntax, LineSyntax>(
        (start, path) => new HolidaysLine(path) { Span = start.Span.To(path.Span) }, Leaf.Word("holidays"), Leaf.Text("a file's path in quotes"));

    public static readonly Parser<Token, LineSyntax> Holiday = Map<Token, Token, DateSyntax, TextSyntax, LineSyntax>(
        (start, day, name) => new HolidayLine(day, name) { Span = start.Span.To(name.Span) }, Leaf.Word("holiday"), Leaf.Date, Leaf.Text("its name in quotes"));

    private static Func<Token, LineSyntax> Used(Semen semen, Token end) => start => new SemenLine(semen) { Span = start.Span.To(end.Span) };

    private static Parser<Token, LineSyntax> CostsOf(string word, SharedCosts kind) => Map<Token, Token, ImmutableArray<(TextSyntax Who, NumberSyntax Percent)>, LineSyntax>(
        (start, shares) => new CostsSharedLine(kind, shares) { Span = start.Span.To(shares[^1].Percent.Span) }, Leaf.Word(word), Shares);

    private static Parser<Token, Token> Calves() => OneOf(Leaf.Word("calves"), Leaf.Word("calf", ""));
}
