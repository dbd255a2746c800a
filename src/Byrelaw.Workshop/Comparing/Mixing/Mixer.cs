namespace Byrelaw.Workshop.Comparing.Mixing;

/// <summary>Puts one rulebook together from two: of whatever differs, the old or the new version, as asked.</summary>
internal sealed class Mixer
{
    private readonly RulebookComparison _between;
    private readonly IReadOnlyCollection<Difference> _with;
    private readonly Programme? _programme;
    private readonly MixedWords _words;
    private readonly MixedDefines _defines;

    public Mixer(RulebookComparison between, IReadOnlyCollection<Difference> with)
    {
        (_between, _with) = (between, with);
        _programme = Farm<ProgrammeDifference, Programme>(rulebook => rulebook.Programme);
        _words = new MixedWords(between, isNew: with.Any(difference => difference is WordDifference));
        _defines = new MixedDefines(between.Pairs.Defines, pair => Taken(pair.Old, pair.New, Applies<DefineDifference>(one => one.Old == pair.Old && one.New == pair.New)), Reword);
    }

    public Rulebook Mix()
    {
        var (old, @new) = (_between.Old, _between.New);
        var pairs = _between.Pairs;
        ImmutableArray<Rule> rules = [.. pairs.Rules.Select(Mixed).OfType<Rule>()];
        ImmutableArray<Prefer> prefers = [.. pairs.Prefers.Select(Mixed).OfType<Prefer>()];
        ImmutableArray<Waiver> waivers = [.. WaiverDetails.Matched(pairs, old, @new).Select(pair => Mixed(pair.Old, pair.New)).OfType<Waiver>()];
        var floor = old.Floor.IsEmpty ? @new.Floor : old.Floor;
        var records = Farm<RecordsDifference, RecordKeeping>(rulebook => rulebook.Records);
        if (records is not null)
        {
            records = records with { Complete = [.. records.Complete.Select(complete => complete with { Kinds = [.. complete.Kinds.Select(_words.Find).OfType<Kind>()] })] };
        }

        return new Rulebook
        {
            Floor = [.. floor.Select(rule => rule with { Needs = Reword(rule.Needs), AppliesTo = rule.AppliesTo is null ? null : Reword(rule.AppliesTo) as NamedCondition })],
            Defines = _defines.All,
            Rules = rules,
            Prefers = prefers,
            Waivers = waivers,
            BrokenParts = Applies<UnreadDifference>(_ => true) ? @new.BrokenParts : old.BrokenParts,
            Programme = _programme,
            Records = records,
            Vocabulary = _words.Vocabulary,
            Files = new[] { old.Files, @new.Files }.SelectMany(files => files).Distinct().ToImmutableArray(),
        };
    }

    private Rule? Mixed(Pair<RuleInForce> pair)
    {
        var isNew = Applies<RuleDifference>(one => one.OldName == pair.Old?.Rule.Name && one.NewName == pair.New?.Rule.Name);
        if (Taken(pair.Old, pair.New, isNew) is not { Drop: null } taken)
        {
            return null;
        }

        var rule = taken.Rule;
        var needs = Reword(rule.Needs);
        var audience = rule.AppliesTo is null ? null : Reword(rule.AppliesTo) as NamedCondition;
        return rule with
        {
            Name = pair.New?.Rule.Name ?? rule.Name,
            Needs = needs,
            AppliesTo = audience,
            IsBroken = rule.IsBroken || _defines.IsBroken(needs) || (rule.AppliesTo is not null && (audience is null || _defines.IsBroken(audience))),
        };
    }

    private Prefer? Mixed(Pair<Prefer> pair)
    {
        if (Taken(pair.Old, pair.New, Applies<PreferDifference>(one => one.Old == pair.Old && one.New == pair.New)) is not { } taken)
        {
            return null;
        }

        var condition = Reword(taken.Condition);
        return taken with { Name = pair.New?.Name ?? taken.Name, Condition = condition, IsBroken = taken.IsBroken || _defines.IsBroken(condition) };
    }

    private Waiver? Mixed(Waiver? old, Waiver? @new) =>
        Taken(old, @new, Applies<WaiverDifference>(one => ReferenceEquals(one.Old, old) && ReferenceEquals(one.New, @new))) is { } taken
            ? taken with { Rule = _between.NameNow(taken.Rule) }
            : null;

    private T? Farm<TDifference, T>(Func<Rulebook, T?> part) where TDifference : Difference where T : class =>
        Applies<TDifference>(_ => true) ? part(_between.New) ?? part(_between.Old) : part(_between.Old) ?? part(_between.New);

    private Condition Reword(Condition condition) => new Rewording(_words, _defines, _programme).Of(condition);

    private bool Applies<T>(Func<T, bool> isIt) where T : Difference => _with.OfType<T>().Any(isIt);

    private static T? Taken<T>(T? old, T? @new, bool isNew) where T : class => isNew ? @new : old;
}
