namespace Byrelaw.Language.Binding;

/// <summary>The kinds with a filter that rules speak of: each filter of a kind is one kind, however often it is written.</summary>
internal sealed class FilteredKinds
{
    private readonly Dictionary<string, Kind> _byText = new(StringComparer.Ordinal);
    private readonly List<Kind> _kinds = [];
    private int _declared;

    /// <summary>Takes ids from after those of the declared kinds on.</summary>
    public void StartAfter(Vocabulary vocabulary) => _declared = vocabulary.Kinds.Length;

    /// <summary>The kind with a filter.</summary>
    public Kind Of(Kind kind, ImmutableArray<DetailTest> tests)
    {
        var filter = new KindFilter(kind, tests);
        var text = $"{kind.Id} {KindText.Of(filter, NameText.Exact)}";
        if (!_byText.TryGetValue(text, out var found))
        {
            found = filter.AsKind(_declared + _kinds.Count);
            _kinds.Add(found);
            _byText.Add(text, found);
        }

        return found;
    }

    /// <summary>The declared words, and these kinds.</summary>
    public Vocabulary With(Vocabulary declared) =>
        _kinds.Count == 0 ? declared : new Vocabulary([.. declared.Kinds, .. _kinds], declared.Facts, declared.Spells) { Hints = declared.Hints, Names = declared.Names, Called = declared.Called };
}
