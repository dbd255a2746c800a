namespace Byrelaw.Language.Floors;

/// <summary>
/// What headings of columns and names of facts may say that the floor asks for: <c>Served</c>, <c>in calf</c>, <c>due date</c>. Their words are not those of what happens: a column
/// <c>Bull</c> or <c>Straw</c> is rather a calf's father. Common practice, no source.
/// </summary>
public static class FloorHeadings
{
    private static readonly ImmutableArray<(string Kind, ImmutableArray<HintedWord> Words)> All =
    [
        .. new (string Kind, string[] Words)[]
        {
            ("mating", ["served", "service", "serviced", "serve", "mated", "mating", "insem", "AI", "AB", "TAI", "FTAI", "covered", "bred", "breeding date", "last breeding", "date of breeding", "Besamung", "besamt", "IA", "KI", "joined", "joining", "jumped", "tupped", "put to", "serv", "srv"]),
            ("transfer", ["ET", "embryo", "implant", "transferred", "transfer date", "date of transfer", "last transfer"]),
            ("bull in", ["bull in", "run with", "with bull", "bull date"]),
            ("pregnancy test", ["in calf", "preg", "pregnant", "pregnancy", "PD", "scan", "scanned", "gestation", "gravid", "conceived", "conception", "foetus", "fetus", "due", "EDC", "expected calving", "calving expected", "expected to calve", "next calving", "exp calving", "ECD", "to calve", "calve by", "carrying", "DCC",
                "days CC", "springer", "springing", "trimester", "recheck", "rescan", "foetal age", "fetal age"]),
            ("drying off", ["dry", "dried", "drying"]),
        }.Select(one => (one.Kind, one.Words.Select(HintedWord.Of).ToImmutableArray())),
    ];

    // A remark here and there may speak of a calf; one cell in ten is a column that does.
    private const int FewestSaying = 10;

    /// <summary>The kind that a heading, or the name of a fact, may say something of; null for none.</summary>
    public static Kind? MayBe(string heading, Vocabulary vocabulary)
    {
        ArgumentNullException.ThrowIfNull(vocabulary);
        var said = HintedWord.Of(heading);
        return All.Where(hinted => hinted.Words.Any(word => word.StandsIn(said))).Select(hinted => vocabulary.FindKind(hinted.Kind)).FirstOrDefault(kind => kind is not null)
            ?? (vocabulary.FindKind(heading) is { } named && Asks(named) ? named : null);
    }

    /// <summary>Whether a kind that is passed over may hide what holds a cow back.</summary>
    public static bool Asks(Kind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return All.Any(hinted => hinted.Kind == NameFolding.Fold(kind.Name)) || (kind is TestKind test && OtherTests.LookForOne(test));
    }

    /// <summary>Whether the cells of a column say of some that they are in calf, whatever stands above them: <c>PD+</c>, <c>in calf</c>; or <c>P</c> beside <c>E</c>.</summary>
    /// <param name="cells">Its texts, and how often each stands there.</param>
    public static bool TellOfCalves(IReadOnlyDictionary<string, int> cells)
    {
        ArgumentNullException.ThrowIfNull(cells);
        var (all, saying) = (0, 0);
        foreach (var (cell, count) in cells)
        {
            all += count;
            saying += CalfWords.Speak(cell) && CalfWords.FoundACalf(cell) ? count : 0;
        }

        return saying * FewestSaying >= all && saying > 0 || (cells.Count > 1 && cells.Keys.All(CalfWords.IsShortOfAScan) && cells.Keys.Any(CalfWords.FoundNoneInShort) && cells.Keys.Any(CalfWords.FoundOneInShort));
    }

    /// <summary>Whether a cell says that nothing was found or that nobody looked, so that nothing is lost with it.</summary>
    public static bool SaysNone(string cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        return CalfWords.FoundNoneInShort(cell) || CalfWords.SayNothing(cell) || cell.Trim() is "0" or "false" or "False" or "FALSE";
    }
}
