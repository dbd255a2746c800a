namespace Byrelaw.Workshop.Comparing.Mixing;

/// <summary>The words of a mixed rulebook: those of the one rulebook, and from the other what its conditions cannot do without.</summary>
internal sealed class MixedWords
{
    private readonly Vocabulary _base;
    private readonly List<Kind> _kinds;
    private readonly List<Fact> _facts;
    private readonly List<Spell> _spells;
    private readonly Dictionary<Kind, Kind> _ofKind = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<Fact, Fact> _ofFact = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<Spell, Spell> _ofSpell = new(ReferenceEqualityComparer.Instance);

    public MixedWords(RulebookComparison between, bool isNew)
    {
        _base = (isNew ? between.New : between.Old).Vocabulary;
        (_kinds, _facts, _spells) = ([.. _base.ById], [.. _base.Facts], [.. _base.Spells]);
        Learn(between.Pairs.Kinds, _ofKind, isNew);
        Learn(between.Pairs.Facts, _ofFact, isNew);
        Learn(between.Pairs.Spells, _ofSpell, isNew);
    }

    /// <summary>All of them, once every condition is reworded.</summary>
    public Vocabulary Vocabulary =>
        _kinds.Count == _base.ById.Length && _facts.Count == _base.Facts.Length && _spells.Count == _base.Spells.Length
            ? _base
            : new Vocabulary([.. _kinds], [.. _facts], [.. _spells]);

    /// <summary>The word that stands here for a kind of either rulebook; null for a filter that says nothing here.</summary>
    public Kind? Find(Kind kind)
    {
        if (kind.Filter is { } filter)
        {
            return Find(filter);
        }

        if (!_ofKind.TryGetValue(kind, out var found))
        {
            _ofKind[kind] = found = kind with { Id = _kinds.Count };
            _kinds.Add(found);
        }

        return found;
    }

    private Kind? Find(KindFilter filter)
    {
        if (Find(filter.Of) is not { } of || filter.InWordsOf(of) is not { } meant)
        {
            return null;
        }

        var text = ConditionText.Exact.Of(meant);
        var found = _kinds.Find(kind => kind.Filter is { } known && known.Of.Id == of.Id && ConditionText.Exact.Of(known) == text);
        if (found is null)
        {
            _kinds.Add(found = meant.AsKind(_kinds.Count));
        }

        return found;
    }

    /// <summary>The same for a fact.</summary>
    public Fact Find(Fact fact)
    {
        if (!_ofFact.TryGetValue(fact, out var found))
        {
            _ofFact[fact] = found = fact with { Id = _facts.Count };
            _facts.Add(found);
        }

        return found;
    }

    /// <summary>The same for a spell; null where its events are something else here.</summary>
    public Spell? Find(Spell spell)
    {
        if (!_ofSpell.TryGetValue(spell, out var found) && Find(spell.From) is EventKind from && Find(spell.Until) is EventKind until)
        {
            _ofSpell[spell] = found = spell with { From = from, Until = until };
            _spells.Add(found);
        }

        return found;
    }

    private static void Learn<T>(IEnumerable<Pair<T>> pairs, Dictionary<T, T> words, bool isNew) where T : class
    {
        foreach (var pair in pairs)
        {
            if ((isNew ? pair.New : pair.Old) is { } here)
            {
                words[here] = here;
                if ((isNew ? pair.Old : pair.New) is { } there)
                {
                    words[there] = here;
                }
            }
        }
    }
}
