namespace Byrelaw.Language.Binding.Rules;

/// <summary>
/// What conditions say of values that a file adds which their own file does not see: <c>add wild to temperament</c> over a base rule that needs <c>temperament is not dangerous</c>. Whoever wrote
/// that rule never thought of wild cows: where it says <c>is not</c>, or stands under <c>not</c>, <c>none of</c> or <c>applies to</c>, it is not known of them; where it says <c>is</c>, false.
/// </summary>
internal sealed class UnseenValues
{
    private readonly Dictionary<SourceFile, RuleFile> _files;
    private readonly bool[] _isUnderNot;
    private readonly IReadOnlyList<Condition> _defines;

    private UnseenValues(IReadOnlyList<RuleFile> files, IReadOnlyList<Condition> defines, IEnumerable<Rule> rules)
    {
        _files = files.ToDictionary(file => file.Source);
        _defines = defines;
        _isUnderNot = new bool[defines.Count];
        foreach (var define in defines)
        {
            Mark(define, isUnderNot: false);
        }

        foreach (var rule in rules)
        {
            Mark(rule.Needs, isUnderNot: false);
            if (rule.AppliesTo is { } whom)
            {
                Mark(whom, isUnderNot: true);
            }
        }
    }

    /// <summary>Doubts them in what is bound so far, before layers ask whether two rules say the same.</summary>
    public static void Doubt(IReadOnlyList<RuleFile> files, Vocabulary vocabulary, List<DefineEntry> defines, List<RuleEntry> rules)
    {
        if (vocabulary.Facts.All(fact => fact.Added.IsEmpty))
        {
            return;
        }

        var unseen = new UnseenValues(files, [.. defines.Select(define => define.Condition!)], rules.Select(entry => entry.Rule).OfType<Rule>());
        foreach (var (define, i) in defines.Select((define, i) => (define, i)))
        {
            define.Condition = unseen.OfDefine(i);
        }

        foreach (var entry in rules)
        {
            entry.Rule = entry.Rule is { } rule ? unseen.Of(rule) : null;
            entry.Prefer = entry.Prefer is { } prefer ? prefer with { Condition = unseen.Of(prefer.Condition, isUnderNot: false) } : null;
        }
    }

    /// <summary>Doubts them in the whole rulebook, what layers ask too.</summary>
    public static Rulebook Doubt(IReadOnlyList<RuleFile> files, Rulebook rulebook)
    {
        if (rulebook.Vocabulary.Facts.All(fact => fact.Added.IsEmpty))
        {
            return rulebook;
        }

        var unseen = new UnseenValues(files, [.. rulebook.Defines.Select(define => define.Condition)], [.. rulebook.Rules, .. rulebook.Floor]);
        return rulebook with
        {
            Defines = [.. rulebook.Defines.Select((define, i) => define with { Condition = unseen.OfDefine(i) })],
            Floor = [.. rulebook.Floor.Select(unseen.Of)],
            Rules = [.. rulebook.Rules.Select(unseen.Of)],
            Prefers = [.. rulebook.Prefers.Select(prefer => prefer with { Condition = unseen.Of(prefer.Condition, isUnderNot: false) })],
        };
    }

    private Condition OfDefine(int index) => Of(_defines[index], _isUnderNot[index]);

    private Rule Of(Rule rule) => rule with
    {
        Needs = Of(rule.Needs, isUnderNot: false),
        Besides = rule.Besides is { } besides ? besides with
        {
            Before = Of(besides.Before, isUnderNot: false),
            Here = Of(besides.Here, isUnderNot: false),
            Shown = besides.Shown is { } shown ? Of(shown, isUnderNot: false) : null,
        } : null,
    };

    private Condition Of(Condition condition, bool isUnderNot) => condition switch
    {
        FactTextCondition fact when isUnderNot || fact.IsNot => fact with { Doubted = Unseen(fact) },
        ListCondition list => list.WithItems([.. list.Items.Select(item => Of(item, isUnderNot || list.Kind == ListKind.NoneOf))]),
        _ => condition,
    };

    private ImmutableArray<string> Unseen(FactTextCondition condition)
    {
        var file = _files.GetValueOrDefault(condition.Span.File);
        return [.. condition.Fact.Added.Where(added => !(file is not null && file.Sees(_files[added.At.File])) && !condition.Values.Contains(added.Value)).Select(added => added.Value)];
    }

    /// <summary>Notes which defines stand under <c>not</c> somewhere: one that stands there and elsewhere is doubted in both places.</summary>
    private void Mark(Condition condition, bool isUnderNot)
    {
        if (condition is ListCondition list)
        {
            foreach (var item in list.Items)
            {
                Mark(item, isUnderNot || list.Kind == ListKind.NoneOf);
            }
        }
        else if (condition is NamedCondition { Index: >= 0 } named && (isUnderNot || named.Not) && named.Index < _isUnderNot.Length && !_isUnderNot[named.Index])
        {
            _isUnderNot[named.Index] = true;
            Mark(_defines[named.Index], isUnderNot: true);
        }
    }
}
