namespace Byrelaw.Workshop.Editing.Suggestions;

/// <summary>What a condition is about decides what may follow: the grammar takes any window and demand after any name.</summary>
internal static class ConditionSubject
{
    /// <summary>The first name of a condition that it can be about; null where there is none yet.</summary>
    public static Symbol? Of(NotedLine line, Namespace names) =>
        LineNames.In(line, names).Where(use => use.Thing.Sort is not (NameSort.Answer or NameSort.Value or NameSort.List or NameSort.Rule))
            .Select(use => names.Find(use.Spelling)).FirstOrDefault(symbol => symbol is not null);

    /// <summary>Whether a part that starts with this word may follow a condition's subject.</summary>
    /// <param name="subject">What the condition is about; null where that is not known.</param>
    /// <param name="word">The first word of the part.</param>
    /// <param name="isCount">Whether the condition counts it.</param>
    public static bool Takes(Symbol? subject, string word, bool isCount) => !IsPart(word) || subject switch
    {
        KindSymbol { Kind: EventKind or TestKind } when isCount => IsWindow(word),
        KindSymbol { Kind: MeasureKind } => IsWindow(word) || IsDemand(word) || word is "of",
        KindSymbol { Kind: TestKind } => IsWindow(word) || word is "is",
        FactSymbol { Fact.Type: FactType.Number or FactType.Amount } => IsDemand(word) || word is "is" or "not" or "in",
        FactSymbol => word is "is",
        BuiltInSymbol { Name: "age" or "parity" } => IsDemand(word),
        SpellSymbol => IsWindow(word),
        KindSymbol or DefineSymbol => false,
        _ => true,
    };

    private static bool IsWindow(string word) => LanguageWords.Has(word, WordRole.StartsWindow);

    private static bool IsDemand(string word) => LanguageWords.Has(word, WordRole.StartsDemand);

    private static bool IsPart(string word) => IsWindow(word) || IsDemand(word) || word is "is" or "not" or "of";

    /// <summary>The units in which a demand on it may be written; the one it is kept in first.</summary>
    public static IEnumerable<string> Units(Symbol? subject) => subject switch
    {
        KindSymbol { Kind: MeasureKind { Unit: { } unit } measure } => Near(unit, measure.MolarMass),
        FactSymbol { Fact.Unit: { } unit } => Near(unit, null),
        BuiltInSymbol { Name: "age" } => ["days", "weeks", "months", "years"],
        _ => [],
    };

    private static IEnumerable<string> Near(Unit unit, double? molarMass) =>
        UnitTable.All.Where(other => UnitConversion.Convert(1, other, unit, molarMass) is not null).Select(other => other.Symbol).Prepend(unit.Symbol).Distinct();
}
