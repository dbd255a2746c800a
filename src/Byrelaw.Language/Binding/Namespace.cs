namespace Byrelaw.Language.Binding;

/// <summary>All names of a rulebook.</summary>
internal sealed class Namespace
{
    private const int MostSearches = 300;

    private readonly Dictionary<string, Symbol> _symbols = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _spellings = new(StringComparer.Ordinal);
    private int _searches;

    /// <summary>The kinds with a filter that have been met.</summary>
    public FilteredKinds Filtered { get; }

    /// <summary>Starts with the built-in names.</summary>
    public Namespace()
        : this(new FilteredKinds())
    {
    }

    /// <summary>The same, beside other names of one rulebook: a kind with a filter is one kind in both.</summary>
    public Namespace(FilteredKinds filtered)
    {
        Filtered = filtered;
        foreach (var name in (string[])["age", "parity", "birth", "cows", "heifers", "females", "her mob", "the herd"])
        {
            Add(new BuiltInSymbol(name));
        }

        // Every programme may set these, and rule files name them without one.
        foreach (var name in (string[])[Farm.ProgrammeDates.Collection, Farm.ProgrammeDates.FirstTreatment, Farm.ProgrammeDates.FirstTransfer, Farm.ProgrammeDates.FinalTransfer, Farm.ProgrammeDates.StartOfMating])
        {
            Add(new DateSymbol(name, null, null));
        }

        void Add(Symbol symbol)
        {
            _symbols[symbol.Name] = symbol;
            _spellings[symbol.Name] = symbol.Name;
        }
    }

    /// <summary>What a name means; null for an unknown one.</summary>
    public Symbol? Find(string name) => _symbols.GetValueOrDefault(NameFolding.Fold(name));

    /// <summary>Whether a name is an event's.</summary>
    public bool IsEvent(NameSyntax name) => Find(name.Text) is KindSymbol { Kind: EventKind };

    /// <summary>Every declared spelling, other names included, with what it means.</summary>
    public IEnumerable<(string Spelling, Symbol Symbol)> All => _spellings.Select(entry => (entry.Value, _symbols[entry.Key]));

    /// <summary>Adds a name, unless another thing has it already.</summary>
    /// <returns>The problem; null for none.</returns>
    public Diagnostic? Declare(string spelling, SourceSpan at, Symbol symbol)
    {
        var folded = NameFolding.Fold(spelling);
        if (folded.Length == 0)
        {
            return NameProblems.Empty(at);
        }

        if (_symbols.TryGetValue(folded, out var taken))
        {
            return NameProblems.Taken(at, spelling, taken);
        }

        _symbols[folded] = symbol;
        _spellings[folded] = spelling;
        return null;
    }

    /// <summary>Gives a name its meaning once it is known.</summary>
    public void Replace(string spelling, Symbol symbol)
    {
        var folded = NameFolding.Fold(spelling);
        if (_symbols.ContainsKey(folded))
        {
            _symbols[folded] = symbol;
        }
    }

    /// <summary>The nearest known name of a wanted sort, for "did you mean"; null where none is near.</summary>
    public (string Spelling, Symbol Symbol)? Nearest(string written, Func<Symbol, bool> wanted)
    {
        // Where hundreds of names are unknown a file is missing, not a letter; and no file may take long to read.
        if (_searches++ > MostSearches)
        {
            return null;
        }

        var spelling = NearestName.To(written, _spellings.Where(entry => wanted(_symbols[entry.Key])).Select(entry => (entry.Key, entry.Value)));
        return spelling is null ? null : (spelling, Find(spelling)!);
    }
}
