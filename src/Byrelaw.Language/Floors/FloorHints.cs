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
            "AB", "TAI", "FTAI", "breeding", "mate", "serve", "cover", "jump", "mount", "sexed", "monta", "saillie", "dekking", "gedekt", "gedeckt"]),
        ("transfer", ["ET", "TE", "IVF", "MOET", "embryo", "implant", "implanted", "recipient used"]),
        ("bull in", ["bull", "natural", "run with", "jumped", "stier", "taureau", "toro", "joining"]),
        ("pregnancy test", ["PD", "preg", "pregnant", "pregnancy", "in calf", "scan"]),
        ("drying off", ["dry", "dried", "DO", "DCT", "end of lactation", "last milking"]),
    ];

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

    /// <summary>Whether a kind is one that the floor speaks of itself, whatever its names sound like.</summary>
    public static bool Knows(Kind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        var name = NameFolding.Fold(kind.Name);
        return name is "bull out" or "calving" or "abortion" or "purchase" || All.Any(hinted => hinted.Kind == name);
    }
}
