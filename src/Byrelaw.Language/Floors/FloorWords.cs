namespace Byrelaw.Language.Floors;

/// <summary>The words that the floor speaks of, and whether a rulebook declares each as carefully as it must be.</summary>
internal static class FloorWords
{
    private const int HalfAYear = 6;
    private const int FirstCalvingAge = 15;
    private const int FirstAbortionAge = 9;

    /// <summary>Every word but <c>abortion</c>, without which nothing but a test ends a pregnancy.</summary>
    private static readonly ImmutableArray<FloorWord> All =
    [
        new("calving", "event calving        not before 15 months of age", symbol => IsEvent(symbol, FirstCalvingAge)),
        new("purchase", "event purchase       joins the herd", symbol => IsEvent(symbol, 0) && symbol is KindSymbol { Kind: EventKind { Effect: HerdEffect.Joins } }),
        new("mating", "event mating         not before 6 months of age", symbol => IsEvent(symbol, HalfAYear)),
        new("transfer", "event transfer       not before 6 months of age", symbol => IsEvent(symbol, HalfAYear)),
        new("drying off", "event drying off     not before 15 months of age", symbol => IsEvent(symbol, FirstCalvingAge)),
        new("running with bull", "spell running with bull  from bull in until bull out, or in a mob with a male from 6 months of age", IsBullSpell),
        new("pregnancy test", "test pregnancy test  answers pregnant, empty  in the yards, with method is one of ultrasound, blood, milk, hand, blank is hand", IsTest),
        new("origin", "fact origin          is one of home-bred, bought", symbol =>
            symbol is FactSymbol { Fact: { Type: FactType.OneOf } fact } && fact.Values.Any(value => NameFolding.Fold(value) == "bought")),
    ];

    private static readonly ImmutableArray<(string Name, string Line)> OfTheBull =
        [("bull in", "event bull in        not before 6 months of age"), ("bull out", "event bull out       not before 6 months of age")];

    /// <summary>The words, by name; null where one is missing or not as careful as it must be.</summary>
    public static IReadOnlyList<(string Name, Symbol Symbol)>? Find(Namespace names)
    {
        var found = All.Select(word => (word.Name, Symbol: names.Find(word.Name))).ToList();
        return All.Zip(found).All(pair => pair.Second.Symbol is { } symbol && pair.First.Means(symbol))
            ? [.. found.Select(word => (word.Name, word.Symbol!)), .. Abortion(names)]
            : null;
    }

    /// <summary>The lines to write where words are missing or wanting, and the place of each that stands there and is wanting.</summary>
    public static IEnumerable<(string Name, string Line, SourceSpan? Wanting)> Lacking(Namespace names)
    {
        foreach (var word in All)
        {
            if (names.Find(word.Name) is not { } symbol)
            {
                foreach (var (name, line) in word.Name == "running with bull" ? OfTheBull.Where(one => names.Find(one.Name) is null) : [])
                {
                    yield return (name, line, null);
                }

                yield return (word.Name, word.Line, null);
            }
            else if (!word.Means(symbol))
            {
                yield return (word.Name, word.Line, symbol.Declared);
            }
        }
    }

    /// <summary>Whether a slipped calf has a word here; one declared carelessly ends no pregnancy.</summary>
    private static IEnumerable<(string Name, Symbol Symbol)> Abortion(Namespace names) =>
        names.Find("abortion") is { } symbol && IsEvent(symbol, FirstAbortionAge) ? [("abortion", symbol)] : [];

    /// <summary>An event that need not be on record for longer than the first months of a life would be one that nobody need write down.</summary>
    private static bool IsEvent(Symbol symbol, int months) => symbol is KindSymbol { Kind: EventKind kind } && IsNoLater(kind.NotBeforeAge, months);

    private static bool IsBullSpell(Symbol symbol) => symbol is SpellSymbol { Spell: { } spell }
        && NameFolding.Fold(spell.From.Name) == "bull in" && NameFolding.Fold(spell.Until.Name) == "bull out"
        && IsNoLater(spell.From.NotBeforeAge, HalfAYear) && IsNoLater(spell.Until.NotBeforeAge, HalfAYear) && spell.WithMaleFrom is not null && IsNoLater(spell.WithMaleFrom, HalfAYear);

    private static bool IsNoLater(TimeLength? age, int months)
    {
        var birth = new LocalDate(2001, 1, 1);
        return age is null || age.Value.After(birth) <= birth.PlusMonths(months);
    }

    private static bool IsTest(Symbol symbol) => symbol is KindSymbol { Kind: TestKind test }
        && test.Answers.Length == 2 && Array.TrueForAll(["pregnant", "empty"], answer => test.Answers.Any(one => NameFolding.Fold(one) == answer))
        && test.Details.FirstOrDefault(detail => NameFolding.Fold(detail.Name) == "method") is { Type: FactType.OneOf } method
        && method.Values.Any(value => NameFolding.Fold(value) == "hand")
        && method.Values.All(value => NameFolding.Fold(value) is "ultrasound" or "blood" or "milk" or "hand")
        && (method.BlankIs < 0 || NameFolding.Fold(method.Values[method.BlankIs]) == "hand");

    /// <param name="Name">As the floor writes it.</param>
    /// <param name="Line">A line that declares it.</param>
    /// <param name="IsCareful">Whether what has the name is what the floor means by it, and no doubt is declared away.</param>
    private sealed record FloorWord(string Name, string Line, Predicate<Symbol> IsCareful)
    {
        /// <summary>Whether a symbol is what the floor means. A word that is only another name of something else is not: who
        /// writes services as `heat also mating` has no services.</summary>
        public bool Means(Symbol symbol) => NameFolding.Fold(symbol.Name) == Name && IsCareful(symbol);
    }
}
