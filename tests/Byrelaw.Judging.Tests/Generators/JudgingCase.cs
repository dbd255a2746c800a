using Byrelaw.Judging.Tests.Reference;
using Byrelaw.Language.Canonical;

namespace Byrelaw.Judging.Tests.Generators;

/// <summary>Rules and records to judge.</summary>
/// <param name="Rulebook">The rules.</param>
/// <param name="Farm">The records.</param>
/// <param name="KnownOn">Judged as known on this day; null for all that is known.</param>
/// <param name="On">Judged on this day; null for each list's own days.</param>
public sealed record JudgingCase(Rulebook Rulebook, PlainFarm Farm, LocalDate? KnownOn, LocalDate? On)
{
    public static readonly Gen<JudgingCase> Any = For(tidy: false);

    /// <summary>Rules of forms that rest on where an anchor may have been, and records of which little is kept.</summary>
    public static readonly Gen<JudgingCase> Doubtful =
        from season in Season.Any
        from farm in GenFarms.For(season)
        from rulebook in GenRulebooks.For(season, [.. farm.Animals.Select(animal => animal.Number)])
        from needs in new GenConditions(season).Doubtful.Array[Math.Max(1, rulebook.Rules.Length)]
        from kept in Gen.Frequency((2, Gen.Const(0)), (1, Gen.Const(1)))
        select new JudgingCase(
            GenRulebooks.AsBound(rulebook with
            {
                Rules = [.. rulebook.Rules.Select((rule, place) => rule with { Needs = needs[place], IsBroken = false })],
                Records = kept == 0 ? rulebook.Records! with { Complete = [.. rulebook.Records.Complete.Take(1)] } : rulebook.Records,
            }),
            farm, null, null);

    /// <summary>What most farms ask and keep: everything written down for long, and counts of one kind since another, of both of which
    /// there are rows in the last weeks before the known day.</summary>
    public static readonly Gen<JudgingCase> Lately =
        from season in Season.Any
        from farm in GenFarms.For(season, tidy: true)
        let numbers = farm.Animals.Select(animal => animal.Number).ToImmutableArray()
        from rows in GenFarms.Lately(season, numbers)
        from rulebook in GenRulebooks.For(season, numbers)
        from needs in GenConditions.CountedSince.Array[Math.Max(1, rulebook.Rules.Length)]
        select new JudgingCase(
            GenRulebooks.AsBound(rulebook with
            {
                Rules = [.. rulebook.Rules.Select((rule, place) => rule with { Needs = needs[place], IsBroken = false })],
                Records = rulebook.Records! with { Complete = [new Completeness([.. Words.Vocabulary.Kinds], season.Known.PlusDays(-1700), Words.Nowhere)] },
            }),
            farm with { Events = [.. farm.Events, .. rows] }, null, null);

    /// <summary>Whether animals run with a bull, on farms with bulls and mobs.</summary>
    public static readonly Gen<JudgingCase> Bulls =
        from season in Season.Any
        from farm in GenFarms.For(season)
        let numbers = farm.Animals.Select(animal => animal.Number).ToImmutableArray()
        from rows in GenFarms.OfBulls(season, numbers)
        from male in Gen.Frequency((1, Gen.Const(false)), (2, Gen.Const(true)))
        from rulebook in GenRulebooks.For(season, numbers)
        from needs in new GenConditions(season).Spell.Array[Math.Max(1, rulebook.Rules.Length)]
        from kept in Gen.Frequency((1, Gen.Const(false)), (3, Gen.Const(true)))
        select new JudgingCase(
            GenRulebooks.AsBound(rulebook with
            {
                Rules = [.. rulebook.Rules.Select((rule, place) => rule with { Needs = needs[place], IsBroken = false, Audience = Audience.Everyone, AppliesTo = null })],
                Programme = rulebook.Programme! with { Choices = [.. rulebook.Programme!.Choices.Select(choice => choice with { From = choice.From is ChoiceFrom.Cows or ChoiceFrom.Heifers ? ChoiceFrom.Females : choice.From })] },
                Records = kept ? rulebook.Records! with { Complete = [new Completeness([.. Words.Vocabulary.Kinds], season.Known.PlusDays(-1700), Words.Nowhere)] } : rulebook.Records,
            }),
            farm with
            {
                Animals = [.. (male ? farm.Animals.SetItem(farm.Animals.Length - 1, farm.Animals[^1] with { Sex = "M" }) : farm.Animals).Select(WithoutIdentity)],
                Events = [.. farm.Events, .. rows],
            }, null, null);

    /// <summary>Rules that ask for entries by their details, and details that are blank, unreadable, in a column that is not there, or different on one day.</summary>
    public static readonly Gen<JudgingCase> Filtered =
        from season in Season.Any
        from farm in GenFarms.For(season)
        from tidy in Gen.Bool
        from detailed in GenFarms.WithDetails(farm, tidy)
        from rulebook in GenRulebooks.For(season, [.. farm.Animals.Select(animal => animal.Number)])
        let conditions = new GenConditions(season)
        from needs in Gen.Frequency((3, conditions.OfDetails), (1, conditions.Doubtful)).Array[Math.Max(1, rulebook.Rules.Length)]
        from seed in Gen.Int[0, 1 << 20]
        from kept in Gen.Frequency((1, Gen.Const(false)), (2, Gen.Const(true)))
        from blanks in Gen.Frequency((3, Gen.Const(0)), (1, Gen.Int[1, 2]))
        from knownOn in Gen.Frequency((8, Gen.Const((LocalDate?)null)), (1, Gen.Int[-40, 5].Select(days => (LocalDate?)season.Known.PlusDays(days))))
        select new JudgingCase(
            AsReadOn(GenRulebooks.AsBound(rulebook with
            {
                Vocabulary = FilteredWords.Vocabulary,
                Rules = [.. rulebook.Rules.Select((rule, place) => rule with { Needs = FilteredWords.In(needs[place], seed + place), IsBroken = false })],
                Records = rulebook.Records! with
                {
                    Complete = kept ? [new Completeness([.. Words.Vocabulary.Kinds], season.Known.PlusDays(-1700), Words.Nowhere)] : rulebook.Records!.Complete,
                    Blanks = blanks == 0 ? [] : [new BlankOf(Words.Mating, 0, Words.Mating.Details[0].Values[blanks - 1], Words.Nowhere), new BlankOf(Words.Virus, 0, "ear", Words.Nowhere)],
                },
            }), knownOn),
            detailed, knownOn, null);

    /// <summary>
    /// Two that may be one animal and whole mobs that move are not drawn together: the reference lays the one over the other more than
    /// once, and so doubts more than is asked.
    /// </summary>
    private static AnimalRow WithoutIdentity(AnimalRow row) =>
        row with { Facts = [.. row.Facts.Select((text, i) => Words.Vocabulary.Facts[i].Type == FactType.Identity ? "" : text)] };

    /// <param name="tidy">Without unreadable rows, vague and pending results.</param>
    public static Gen<JudgingCase> For(bool tidy) =>
        from season in Season.Any
        from farm in GenFarms.For(season, tidy)
        from rulebook in GenRulebooks.For(season, [.. farm.Animals.Select(animal => animal.Number)])
        from knownOn in Gen.Frequency((8, Gen.Const((LocalDate?)null)), (1, Gen.Int[-40, 5].Select(days => (LocalDate?)season.Known.PlusDays(days))))
        from @on in Gen.Frequency((8, Gen.Const((LocalDate?)null)), (1, Gen.Int[-60, 60].Select(days => (LocalDate?)season.Known.PlusDays(days))))
        select new JudgingCase(AsReadOn(rulebook, knownOn), farm, knownOn, @on);

    /// <summary>"Under <c>--known-on D</c>, agreements after D do not exist."</summary>
    private static Rulebook AsReadOn(Rulebook rulebook, LocalDate? knownOn) =>
        knownOn is { } day ? rulebook with { Waivers = [.. rulebook.Waivers.Where(waiver => waiver.Agreement.On <= day)] } : rulebook;

    /// <summary>Small enough to read: the rules in their one spelling, the rows as files.</summary>
    public override string ToString()
    {
        var text = new StringBuilder();
        text.Append(CanonicalText.Of(Rulebook));
        text.Append("\n--known-on ").Append(KnownOn?.ToString() ?? "(none)").Append("  --on ").Append(On?.ToString() ?? "(none)");
        text.Append("\n--- animals.csv\n").Append(Encoding.UTF8.GetString(FarmCsv.Animals(Farm)));
        text.Append("--- events.csv\n").Append(Encoding.UTF8.GetString(FarmCsv.Events(Farm)));
        return text.ToString();
    }
}
