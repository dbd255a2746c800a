namespace Byrelaw.Language.Floors;

/// <summary>
/// What a cell may tell of that no rule reads: a status <c>PREG</c>, an ovary that is <c>pregnant</c>, an action <c>served</c>. Of a calf wherever words speak of one and do not say that none was
/// found; of a service and of drying off only where nothing else stands in the cell, for these words stand in names and remarks too. Common practice, no source.
/// </summary>
public sealed class FloorSigns
{
    private static readonly ImmutableArray<(string Kind, ImmutableArray<string> Cells)> Whole =
    [
        ("pregnancy test", ["PG", "P+", "springer", "springing", "close up", "carrying", "holding", "settled"]),
        ("mating", ["served", "serviced", "mated", "inseminated", "AI", "AIed", "AI done", "TAI", "FTAI", "bred", "covered", "joined", "service", "mating", "insemination", "to AI", "besamt", "IA", "KI"]),
        ("transfer", ["ET", "ET done", "implanted", "embryo", "embryo transferred", "embryo transfer", "transferred", "recipient"]),
        ("bull in", ["with bull", "run with bull", "bull in", "natural service"]),
        ("drying off", ["dry", "dried", "dried off", "dry cow", "dry cows", "drying off", "dry off"]),
    ];

    /// <summary>Facts and columns in which such words are somebody else's: her father, the straw, her name, what stands in a breed book.</summary>
    private static readonly ImmutableArray<string> OfOthers =
        ["sire", "dam", "father", "mother", "bull", "straw", "semen", "name", "breed", "breeder", "origin", "colour", "color", "tag", "identity", "farm", "owner", "vendor", "technician", "calf", "calves", "twin"];

    private static readonly ImmutableArray<string> Services = ["served", "serviced", "inseminated", "mated", "ai", "aied", "tai", "ftai", "besamt"];

    private static readonly ImmutableArray<string> NoWords = ["no", "not", "never", "none", "nil", "due", "to", "for"];

    /// <summary>The letters of the longest cell that tells of something: what says more is a remark.</summary>
    public const int LongestCell = 40;

    private readonly ImmutableArray<(string Joined, Kind Kind)> _whole;
    private readonly Kind? _test;
    private readonly Dictionary<string, Kind?> _known = new(StringComparer.Ordinal);

    /// <summary>With the kinds that a vocabulary has. For one thread.</summary>
    public FloorSigns(Vocabulary vocabulary)
    {
        ArgumentNullException.ThrowIfNull(vocabulary);
        _test = vocabulary.FindKind("pregnancy test");
        _whole = [.. from one in Whole let kind = vocabulary.FindKind(one.Kind) where kind is not null from cell in one.Cells select (HintedWord.Of(cell).Joined, kind)];
    }

    /// <summary>The kind that a cell may tell of; null for none.</summary>
    public Kind? In(string cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        if (!_known.TryGetValue(cell, out var kind))
        {
            // The same few words stand in most cells.
            kind = Find(cell) ?? ServiceFirst(cell);
            if (_known.Count < 10_000 && cell.Length <= LongestCell)
            {
                _known.Add(cell, kind);
            }
        }

        return kind;
    }

    /// <summary>The kind that the name of a mob may tell of: <c>In calf</c>, <c>Springers</c>, <c>Dry cows</c>; null for none.</summary>
    public Kind? InMob(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return Find(name) ?? (name.EndsWith('s') ? Find(name[..^1]) : null);
    }

    /// <summary>The kind that the last word of a cell may tell of, where something else stands before it, as in <c>kg served</c>; null for none.</summary>
    public Kind? AtTheEnd(string cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        return cell.LastIndexOf(' ') is > 0 and var blank ? Find(cell[(blank + 1)..]) : null;
    }

    /// <summary>Whether what stands under a heading, or in a fact or a detail of this name, is about something else than her.</summary>
    public static bool IsOfOthers(string heading) => HintedWord.Of(heading).Words.Split(' ').Any(word => OfOthers.Contains(word) || OfOthers.Contains(word.TrimEnd('s')));

    /// <summary>A service that is said first, and then by whom or by what: <c>AI Sunny</c>, <c>served Duke</c>. No more than three words, and none that says no.</summary>
    private Kind? ServiceFirst(string cell)
    {
        string[] words = cell.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words.Length is 2 or 3 && !words.Any(word => NoWords.Contains(NameFolding.Fold(word))) && Services.Contains(NameFolding.Fold(words[0])) ? Find(words[0]) : null;
    }

    private Kind? Find(string cell)
    {
        if (cell.Length is 0 or > LongestCell || FloorHeadings.SaysNone(cell))
        {
            return null;
        }

        if (_test is not null && CalfWords.Speak(cell) && !CalfWords.FoundNone(cell))
        {
            return _test;
        }

        var said = HintedWord.Of(cell).Joined;
        return said.Length == 0 ? null : _whole.FirstOrDefault(one => one.Joined == said).Kind;
    }
}
