namespace Byrelaw.Workshop.Comparing;

/// <summary>Which things of two rulebooks are one and the same, by whatever name.</summary>
internal sealed class Pairs
{
    private readonly Dictionary<string, string> _wordsBefore;
    private readonly Dictionary<string, string> _definesBefore = [];
    private readonly Dictionary<string, string> _rulesNow = [];

    private Pairs(Rulebook old, Rulebook @new)
    {
        Kinds = Pairing.OfWords(old.Vocabulary.Kinds, @new.Vocabulary.Kinds, kind => (kind.Name, kind.AlsoNames));
        Facts = Pairing.OfWords(old.Vocabulary.Facts, @new.Vocabulary.Facts, fact => (fact.Name, fact.AlsoNames));
        Spells = Pairing.OfWords(old.Vocabulary.Spells, @new.Vocabulary.Spells, spell => (spell.Name, []));
        _wordsBefore = Kinds.Where(pair => pair.IsBoth).Select(pair => (pair.New!.Name, pair.Old!.Name))
            .Concat(Facts.Where(pair => pair.IsBoth).Select(pair => (pair.New!.Name, pair.Old!.Name)))
            .Concat(Spells.Where(pair => pair.IsBoth).Select(pair => (pair.New!.Name, pair.Old!.Name)))
            .DistinctBy(names => names.Item1).ToDictionary(names => names.Item1, names => names.Item2);
        AsWas = new ConditionText(NameBefore, NameBefore, Plurals: false);

        Defines = Pairing.Of(old.Defines, @new.Defines, define => define.Name, define => AsIs.Of(define.Condition), define => AsWas.Of(define.Condition));
        foreach (var pair in Defines.Where(pair => pair.IsBoth))
        {
            _definesBefore[pair.New!.Name] = pair.Old!.Name;
        }

        Rules = Pairing.Of(
            [.. old.Rules.Select(rule => new RuleInForce(rule, null)), .. old.Drops.Select(drop => new RuleInForce(drop.Rule, drop))],
            [.. @new.Rules.Select(rule => new RuleInForce(rule, null)), .. @new.Drops.Select(drop => new RuleInForce(drop.Rule, drop))],
            rule => rule.Rule.Name, rule => Meaning(rule.Rule, AsIs), rule => Meaning(rule.Rule, AsWas));
        Prefers = Pairing.Of(
            old.Prefers, @new.Prefers, prefer => prefer.Name,
            prefer => $"{prefer.List}: {AsIs.Of(prefer.Condition)}", prefer => $"{prefer.List}: {AsWas.Of(prefer.Condition)}");
        foreach (var (before, now) in Rules.Where(pair => pair.IsBoth).Select(pair => (pair.Old!.Rule.Name, pair.New!.Rule.Name))
            .Concat(Prefers.Where(pair => pair.IsBoth).Select(pair => (pair.Old!.Name, pair.New!.Name))))
        {
            _rulesNow.TryAdd(before, now);
        }
    }

    /// <summary>Conditions of the old rulebook.</summary>
    public static ConditionText AsIs { get; } = new(name => name, name => name, Plurals: false);

    /// <summary>Conditions of the new rulebook in the names of the old one.</summary>
    public ConditionText AsWas { get; }

    public List<Pair<Kind>> Kinds { get; }

    public List<Pair<Fact>> Facts { get; }

    public List<Pair<Spell>> Spells { get; }

    public List<Pair<Define>> Defines { get; }

    /// <summary>Rules in force, and rules set aside by a drop.</summary>
    public List<Pair<RuleInForce>> Rules { get; }

    public List<Pair<Prefer>> Prefers { get; }

    public static Pairs Of(Rulebook old, Rulebook @new) => new(old, @new);

    /// <summary>The new name of a rule or preference of the old rulebook.</summary>
    public string RuleNow(string before) => _rulesNow.GetValueOrDefault(before, before);

    /// <summary>The old name of a word or define of the new rulebook.</summary>
    public string NameBefore(string now) => _definesBefore.GetValueOrDefault(now) ?? _wordsBefore.GetValueOrDefault(now, now);

    private static string Meaning(Rule rule, ConditionText text) =>
        $"{rule.List}: {rule.Audience} {(rule.AppliesTo is { } named ? text.Of(named) : "")} {text.Of(rule.Needs)}";
}

/// <summary>A rule, and the drop that sets it aside, if one does.</summary>
internal sealed record RuleInForce(Rule Rule, Drop? Drop);
