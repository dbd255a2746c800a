namespace Byrelaw.Language.Floors;

/// <summary>
/// What words beside the floor's may mean, whatever hints the files give: a farm that writes down <c>straw</c> as an event of its own would else have
/// promised that nobody was served. Only what would hold a cow back is hinted; a calving that is overlooked holds her back as it is.
/// </summary>
public static class FloorHints
{
    private static readonly SourceSpan Here = new(new SourceFile(FloorText.Path, "") { IsOfTheProgram = true }, 0, 0);

    private static readonly ImmutableArray<(string Kind, ImmutableArray<string> Words)> All =
    [
        ("mating", ["AI", "Al", "IA", "KI", "insem", "semen", "straw", "service", "served", "mated", "bred", "covered", "covering", "Besamung", "besamt",
            "AB", "TAI", "FTAI", "breeding", "mate", "serve", "cover", "jump", "mount", "sexed", "monta", "saillie", "dekking", "gedekt", "gedeckt",
            "serv", "srv", "BRE", "rebred", "AIed", "ABd", "put to", "repeat", "repeats", "repeat service"]),
        ("transfer", ["ET", "TE", "IVF", "MOET", "embryo", "implant", "implanted", "recipient", "recip", "egg in", "planted"]),
        ("bull in", ["bull", "natural", "run with", "jumped", "stier", "taureau", "toro", "joining", "joined", "sweeper", "clean-up bull"]),
        ("pregnancy test", ["PD", "preg", "pregnant", "pregnancy", "in calf", "scan", "conceived", "conception", "gestation", "gravid", "foetus", "fetus", "foetal age", "fetal age", "foetal size", "fetal size", "springing", "springer", "close up",
            "steaming up", "bagging up", "carrying", "holding", "settled", "PAG", "trimester", "PIC", "CIC", "PDP", "confirmed", "heavy in calf"]),
        ("purchase", ["arrived", "arrival", "bought", "hired", "leased", "came in", "moved in", "brought in", "brought back", "on agistment"]),
        ("drying off", ["dry", "dried", "DO", "DCT", "end of lactation", "last milking", "stopped milking"]),
    ];

    private static readonly ImmutableArray<string> Away = ["strayed", "stray", "got out", "sent away", "away", "came home", "came back", "returned home", "lent", "on loan", "agisted"];

    /// <summary>The hints, for kinds that are there: whatever such a kind is called is one too, for <c>first mating</c> and <c>second transfer</c> hold it.</summary>
    public static IEnumerable<Hint> Of(Vocabulary vocabulary)
    {
        ArgumentNullException.ThrowIfNull(vocabulary);
        return
            from hinted in All
            let kind = vocabulary.FindKind(hinted.Kind)
            where kind is not null
            from word in hinted.Words.Concat(kind.AlsoNames).Append(kind.Name)
            select new Hint(word, kind, Here);
    }

    /// <summary>
    /// The pregnancy test, where an event or a measure of the farm's own is called so that it may tell of one: a row <c>confirmed in calf</c> is for her a test whose result nobody knows. A farm that
    /// gives the hint itself knows what it means by it.
    /// </summary>
    public static Kind? TestOf(Kind kind, Vocabulary vocabulary)
    {
        ArgumentNullException.ThrowIfNull(kind);
        ArgumentNullException.ThrowIfNull(vocabulary);
        if (kind is TestKind || kind.Filter is not null || Knows(kind) || vocabulary.FindKind("pregnancy test") is not { } test)
        {
            return null;
        }

        var words = All.First(one => one.Kind == "pregnancy test").Words;
        return kind.AlsoNames.Prepend(kind.Name).Any(name => !CalfWords.FoundNone(name) && !IsOfTheAfterbirth(name) && (CalfWords.Speak(name)
            || words.Any(word => HintedWord.StandsIn(name, word) && !vocabulary.Hints.Any(own => own.Declared.File == kind.Declared.File && own.Kind.Id == test.Id && NameFolding.Fold(own.Word) == NameFolding.Fold(word)))))
            ? test : null;
    }

    /// <summary>
    /// The mating that an event of the farm's own may stand for by its name, as far as she goes of whom it is: who strayed or was sent away was among others' bulls, and nobody wrote down what happened there.
    /// </summary>
    public static Kind? MatingAway(Kind kind, Vocabulary vocabulary)
    {
        ArgumentNullException.ThrowIfNull(kind);
        ArgumentNullException.ThrowIfNull(vocabulary);
        return kind is EventKind { Effect: HerdEffect.None, IsMobMove: false, Filter: null } && !Knows(kind) && kind.AlsoNames.Prepend(kind.Name).Any(name => Away.Any(word => HintedWord.StandsIn(name, word)))
            ? vocabulary.FindKind("mating") : null;
    }

    /// <summary>Fetal membranes are held back after a calving.</summary>
    private static bool IsOfTheAfterbirth(string name) => NameFolding.Fold(name).Contains("membran", StringComparison.Ordinal);

    /// <summary>Whether a kind is one that the floor speaks of itself, whatever its names sound like.</summary>
    public static bool Knows(Kind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        var name = NameFolding.Fold(kind.Name);
        return name is "bull out" or "calving" or "abortion" or "purchase" || All.Any(hinted => hinted.Kind == name);
    }
}
