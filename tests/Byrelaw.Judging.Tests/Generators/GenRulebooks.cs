using Byrelaw.Judging.Tests.Reference;

namespace Byrelaw.Judging.Tests.Generators;

/// <summary>Whole rulebooks, built as bound records without the reader.</summary>
public static class GenRulebooks
{
    private static readonly string[] DefineNames = ["quiet", "proven", "settled"];

    public static string DefineName(int index) => DefineNames[index];

    public static Gen<Rulebook> For(Season season, ImmutableArray<string> numbers) =>
        from defines in Defines(season)
        from rules in Gen.Select(Gen.Int[0, 4], Gen.Int[0, 2]).SelectMany((recipients, donors) =>
            Rules(season, "recipients", recipients, defines.Length).SelectMany(first =>
                Rules(season, "donors", donors, defines.Length).Select(second => first.AddRange(second))))
        from prefers in Prefers(season, defines.Length)
        from waivers in Waivers(season, [.. rules.Where(rule => !rule.IsSafety).Select(rule => rule.Name)], numbers)
        from brokenPart in Gen.Frequency((30, Gen.Const(0)), (1, Gen.Const(1)), (1, Gen.Const(2)))
        from programme in Programmes(season, numbers)
        from keeping in Keeping(season)
        select AsBound(new Rulebook
        {
            Vocabulary = Words.Vocabulary,
            Defines = defines,
            Rules = rules,
            Prefers = prefers,
            Waivers = waivers,
            BrokenParts = brokenPart == 0 ? [] : [new BrokenPart(brokenPart == 1 ? "recipients" : null, Words.Nowhere)],
            Programme = programme,
            Records = keeping,
            Files = [Words.Nowhere.File],
        });

    /// <summary>A spell that runs passes nothing, whatever the records say after it ends: safer than the letter, which asks what they would say.</summary>
    private static IfNotKnown PassesNothingAfterSpells(Rule rule, Rulebook rulebook) =>
        rule.IfNotKnown == IfNotKnown.Pass && rule.Needs.Leaves(rulebook).Any(leaf => leaf.Windows.Any(window => window is FromAfterSpell or BeforeDay { Day.Date: null } or DaysAfter { Day.Date: null })) ? IfNotKnown.Ask : rule.IfNotKnown;

    /// <summary>As the reader marks them: "a broken bullet breaks its list, a broken define its users".</summary>
    public static Rulebook AsBound(Rulebook rulebook) => rulebook with
    {
        Defines = [.. rulebook.Defines.Select(define => define with { IsBroken = define.IsBroken || Broken.Is(define.Condition, rulebook) })],
        Rules = [.. rulebook.Rules.Select(rule => rule with { IsBroken = Broken.Is(rule, rulebook), IfNotKnown = PassesNothingAfterSpells(rule, rulebook) })],
        Prefers = [.. rulebook.Prefers.Select(prefer => prefer with { IsBroken = prefer.IsBroken || Broken.Is(prefer.Condition, rulebook) })],
    };

    private static Gen<ImmutableArray<Define>> Defines(Season season)
    {
        var conditions = new GenConditions(season);
        return Gen.Int[0, 2].SelectMany(count => count == 0
            ? Gen.Const(ImmutableArray<Define>.Empty)
            : conditions.Any(0).SelectMany(first => count == 1
                ? Gen.Const(ImmutableArray.Create(Define(0, first)))
                : conditions.Any(1).Select(second => ImmutableArray.Create(Define(0, first), Define(1, second)))));

        static Define Define(int index, Condition condition) => new(DefineName(index), condition, false, Words.Nowhere);
    }

    private static Gen<ImmutableArray<Rule>> Rules(Season season, string list, int count, int defines)
    {
        var conditions = new GenConditions(season);
        var rule =
            from needs in conditions.Any(defines)
            from safety in Gen.Frequency((5, Gen.Const(false)), (1, Gen.Const(true)))
            from onTheDay in Gen.Frequency((9, Gen.Const(false)), (1, Gen.Const(true)))
            from audience in Gen.Frequency(
                (5, Gen.Const(Audience.Everyone)), (1, Gen.Const(Audience.Cows)), (1, Gen.Const(Audience.Heifers)), (1, Gen.Const(Audience.Females)),
                (defines == 0 ? 0 : 1, Gen.Const(Audience.Named)))
            from named in GenConditions.Named(Math.Max(1, defines))
            from ifNotKnown in Gen.Frequency((4, Gen.Const(IfNotKnown.Ask)), (1, Gen.Const(IfNotKnown.Pass)), (1, Gen.Const(IfNotKnown.Exclude)))
            from broken in Gen.Frequency((40, Gen.Const(false)), (1, Gen.Const(true)))
            select new Rule
            {
                Name = "",
                List = list,
                IsSafety = safety,
                OnTheDay = onTheDay,
                Audience = audience,
                AppliesTo = audience == Audience.Named ? named : null,
                Needs = needs,
                IfNotKnown = safety && ifNotKnown == IfNotKnown.Pass ? IfNotKnown.Ask : ifNotKnown,
                Because = "it is so",
                Source = "common practice",
                IsBroken = broken,
                Span = Words.Nowhere,
            };
        return rule.Array[count].Select(rules => rules.Select((one, i) => one with { Name = $"{list} rule {i + 1}" }).ToImmutableArray());
    }

    private static Gen<ImmutableArray<Prefer>> Prefers(Season season, int defines)
    {
        var conditions = new GenConditions(season);
        var prefer =
            from condition in conditions.Any(defines)
            from counts in Gen.OneOf(1.0, 2, 0.5)
            select new Prefer { Name = "", List = "recipients", Condition = condition, Counts = counts, Span = Words.Nowhere };
        return prefer.Array[0, 2].Select(prefers => prefers.Select((one, i) => one with { Name = $"prefer {i + 1}" }).ToImmutableArray());
    }

    private static Gen<ImmutableArray<Waiver>> Waivers(Season season, ImmutableArray<string> rules, ImmutableArray<string> numbers)
    {
        if (rules.IsEmpty || numbers.IsEmpty)
        {
            return Gen.Const(ImmutableArray<Waiver>.Empty);
        }

        var waiver =
            from rule in Gen.OneOf([.. rules])
            from animal in Gen.OneOf([.. numbers])
            from agreed in Gen.OneOf(Gen.Int[-30, 10].Select(days => season.Known.PlusDays(days)), Gen.Const(season.FirstTransfer))
            from lasts in Gen.Int[0, 60]
            select new Waiver(rule, animal, agreed.PlusDays(lasts), "it was looked at", new Agreement(["herd vet"], agreed), Words.Nowhere);
        return Gen.Frequency((3, Gen.Const(Array.Empty<Waiver>())), (1, waiver.Array[1, 2])).Select(waivers => waivers.ToImmutableArray());
    }

    private static Gen<Programme> Programmes(Season season, ImmutableArray<string> numbers) =>
        from recipients in Gen.OneOf(ChoiceFrom.Females, ChoiceFrom.Females, ChoiceFrom.Cows, ChoiceFrom.Heifers, ChoiceFrom.Named)
        from donors in Gen.OneOf(ChoiceFrom.Named, ChoiceFrom.AnotherList, ChoiceFrom.Females, ChoiceFrom.Cows)
        from hasDonors in Gen.OneOf(false, false, true)
        let dates = ImmutableArray.Create(
            new ProgrammeDate("collection", season.Collection, Words.Nowhere),
            new ProgrammeDate("first transfer", season.FirstTransfer, Words.Nowhere),
            new ProgrammeDate("final transfer", season.FinalTransfer, Words.Nowhere))
        let first = new Choice("recipients", recipients, recipients == ChoiceFrom.Named ? numbers : [], null, season.FirstTransfer, season.FinalTransfer, Words.Nowhere)
        let second = new Choice(
            "donors", donors, donors == ChoiceFrom.Named ? [.. numbers.Take(1)] : [], donors == ChoiceFrom.AnotherList ? "recipients" : null,
            season.Collection, season.Collection, Words.Nowhere)
        select new Programme("Random farm", dates, hasDonors ? [first, second] : [first], Words.Nowhere);

    /// <summary>Most kinds complete for long, some since lately, some not at all.</summary>
    private static Gen<RecordKeeping> Keeping(Season season)
    {
        var kinds = Words.Vocabulary.Kinds;
        return
            from since in Gen.Frequency(
                (4, Gen.Const((LocalDate?)season.Known.PlusDays(-1700))),
                (2, season.Past.Select(date => (LocalDate?)date)),
                (1, Gen.Const((LocalDate?)null))).Array[kinds.Length]
            from ends in Gen.Frequency((9, Gen.Const((LocalDate?)null)), (1, season.Past.Select(date => (LocalDate?)date))).Array[kinds.Length]
            from again in Gen.Int[1, 60].Array[kinds.Length]
            from none in Gen.Frequency((8, Gen.Const((Kind?)null)), (1, Gen.OneOf<Kind>(Words.BullIn, Words.Mob)))
            from agreed in Gen.Frequency((6, Gen.Const(false)), (1, Gen.Const(true)))
            from isSaid in Gen.Frequency((8, Gen.Const(true)), (1, Gen.Const(false)))
            select new RecordKeeping(
                "records",
                isSaid ? season.Known : null,
                [.. kinds.Select((kind, i) => (kind, since[i], ends[i])).Where(kind => kind.Item2 is not null).SelectMany(kind => Stretches(kind.kind, kind.Item2!.Value, kind.Item3, again[kind.kind.Id]))
                    .Select(complete => complete with
                    {
                        IsNone = complete.Kinds[0] == none,
                        Because = agreed ? "the bull has gone" : null,
                        Agreement = agreed ? new Agreement(["farmer"], complete.Since) : null,
                    })],
                [new LeftOut("foot trim", null, Words.Nowhere)],
                Words.Nowhere);
    }

    /// <summary>A promise, which may end; where it ended some time ago, another one may begin after it.</summary>
    private static IEnumerable<Completeness> Stretches(Kind kind, LocalDate since, LocalDate? until, int again)
    {
        if (until is not { } end || end < since)
        {
            return [new Completeness([kind], since, Words.Nowhere)];
        }

        var first = new Completeness([kind], since, Words.Nowhere) { Until = end };
        return again % 2 == 0 ? [first] : [first, new Completeness([kind], end.PlusDays(again), Words.Nowhere)];
    }
}
