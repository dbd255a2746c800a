namespace Byrelaw.Language.Rulebooks.Words;

/// <summary>The words that the files of one rulebook declare. Names are compared folded: see
/// <see cref="NameFolding"/>.</summary>
public sealed class Vocabulary
{
    private readonly Dictionary<string, Kind> _kinds;
    private readonly Dictionary<string, Fact> _facts;

    /// <summary>Takes declared words whose ids are their places in these arrays.</summary>
    public Vocabulary(ImmutableArray<Kind> kinds, ImmutableArray<Fact> facts, ImmutableArray<Spell> spells)
    {
        ById = kinds;
        Kinds = kinds.All(kind => kind.Filter is null) ? kinds : [.. kinds.Where(kind => kind.Filter is null)];
        Facts = facts;
        Spells = spells;
        _kinds = ByName(Kinds, kind => (kind.Name, kind.AlsoNames));
        _facts = ByName(facts, fact => (fact.Name, fact.AlsoNames));
        MobMove = kinds.OfType<EventKind>().Single(kind => kind.IsMobMove);
    }

    /// <summary>Declared events, measures and tests; the built-in event <c>mob</c> is among them.</summary>
    public ImmutableArray<Kind> Kinds { get; }

    /// <summary>The same and the kinds with a filter that rules speak of, each at the place of its id.</summary>
    public ImmutableArray<Kind> ById { get; }

    /// <summary>Kinds with a filter.</summary>
    public IEnumerable<Kind> Filtered => ById.Where(kind => kind.Filter is not null);

    /// <summary>Declared facts; the built-in <c>age</c> and <c>parity</c> are not among them.</summary>
    public ImmutableArray<Fact> Facts { get; }

    /// <summary>Declared spells.</summary>
    public ImmutableArray<Spell> Spells { get; }

    /// <summary>What words in other people's records may mean.</summary>
    public ImmutableArray<Hint> Hints { get; init; } = [];

    /// <summary>Every name of every kind, with the place where it is given; empty for a vocabulary that no file declares.</summary>
    public ImmutableArray<GivenName> Names { get; init; } = [];

    /// <summary>What else built-in names are called, such as <c>lactation</c> for <c>parity</c>, and where that is said.</summary>
    public ImmutableArray<(string Name, string BuiltIn, SourceSpan From)> Called { get; init; } = [];

    /// <summary>The built-in event <c>mob</c>.</summary>
    public EventKind MobMove { get; }

    /// <summary>The event named <c>calving</c>, which tells cows from heifers; null where no file declares it.</summary>
    public EventKind? Calving => FindKind("calving") as EventKind;

    /// <summary>The event <c>timed heat</c>, which is worked out from what was given, and the event that says what was: it is known where that is. Null where no file declares both.</summary>
    public (EventKind Timed, EventKind Given)? TimedHeat => FindKind("timed heat") is EventKind timed && Kinds.OfType<EventKind>().FirstOrDefault(kind => kind.Marks == Marks.Treatment) is { } given ? (timed, given) : null;

    /// <summary>The kind with this name, by any of its spellings.</summary>
    public Kind? FindKind(string name) => _kinds.GetValueOrDefault(NameFolding.Fold(name));

    /// <summary>The fact with this name, by any of its spellings.</summary>
    public Fact? FindFact(string name) => _facts.GetValueOrDefault(NameFolding.Fold(name));

    private static Dictionary<string, T> ByName<T>(
        ImmutableArray<T> words, Func<T, (string Name, ImmutableArray<string> Also)> names)
    {
        var byName = new Dictionary<string, T>(StringComparer.Ordinal);
        foreach (var word in words)
        {
            var (name, also) = names(word);
            byName.TryAdd(NameFolding.Fold(name), word);
            foreach (var other in also)
            {
                byName.TryAdd(NameFolding.Fold(other), word);
            }
        }

        return byName;
    }
}

/// <summary>A name of a kind.</summary>
/// <param name="Text">As written.</param>
/// <param name="Kind">What it means.</param>
/// <param name="From">Where it is given.</param>
public readonly record struct GivenName(string Text, Kind Kind, SourceSpan From);
