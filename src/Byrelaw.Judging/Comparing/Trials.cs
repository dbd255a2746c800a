namespace Byrelaw.Judging.Comparing;

/// <summary>What is told of every animal by the old rulebook with any set of the changes; each set is judged once.</summary>
internal sealed class Trials
{
    private readonly RulebookComparison _between;
    private readonly IReadOnlyList<Change> _changes;
    private readonly Func<Rulebook, Herd> _read;
    private readonly Action _judged;
    private readonly Dictionary<string, Dictionary<(string List, string Number), Told>> _told = [];
    private readonly Dictionary<(bool WordsAreNew, bool RecordsAreNew), Herd> _herds = [];

    public Trials(RulebookComparison between, IReadOnlyList<Change> changes, Draft old, Draft @new, Func<Rulebook, Herd> read, Action judged)
    {
        (_between, _changes, _read, _judged) = (between, changes, read, judged);
        _told[Key(ChangeSet.None)] = AllTold(old, between.NameNow);
        _told[Key(ChangeSet.All(changes.Count))] = AllTold(@new, name => name);
    }

    /// <summary>What is told of one animal; null where the list does not take her.</summary>
    public Told? ToldWith(ChangeSet with, (string List, string Number) who) => All(with).GetValueOrDefault(who);

    /// <summary>What is told of all animals.</summary>
    public Dictionary<(string List, string Number), Told> All(ChangeSet with)
    {
        if (!_told.TryGetValue(Key(with), out var told))
        {
            var mixed = _between.Mix([.. with.Members.SelectMany(change => _changes[change].Parts)]);
            _told[Key(with)] = told = AllTold(new Judge(mixed, HerdOf(mixed, with)).JudgeAll(), name => name);
            _judged();
        }

        return told;
    }

    private Herd HerdOf(Rulebook mixed, ChangeSet with)
    {
        var wordsAreNew = ReferenceEquals(mixed.Vocabulary, _between.New.Vocabulary) && !ReferenceEquals(_between.Old.Vocabulary, _between.New.Vocabulary);
        if (!wordsAreNew && !ReferenceEquals(mixed.Vocabulary, _between.Old.Vocabulary))
        {
            return _read(mixed);
        }

        var key = (wordsAreNew, with.Members.Any(change => _changes[change].Parts[0] is RecordsDifference));
        if (!_herds.TryGetValue(key, out var herd))
        {
            _herds[key] = herd = _read(mixed);
        }

        return herd;
    }

    private static Dictionary<(string List, string Number), Told> AllTold(Draft draft, Func<string, string> nameNow) =>
        draft.Lists.SelectMany(list => list.Animals.Select(animal => (list.Choice.List, animal)))
            .ToDictionary(one => (one.List, one.animal.Number), one => Told.Of(one.animal, nameNow));

    private static string Key(ChangeSet set) => string.Join(',', set.Members);
}
