namespace Byrelaw.Workshop.Editing.Names;

/// <summary>What the names of a rulebook are to an editor.</summary>
internal static class SymbolThings
{
    /// <summary>The thing that a name of the namespace means.</summary>
    public static NamedThing Of(Symbol symbol) => NamedThing.Of(Sort(symbol), symbol.Name);

    /// <summary>What sort of thing it is.</summary>
    public static NameSort Sort(Symbol symbol) => symbol switch
    {
        KindSymbol { Kind: EventKind } => NameSort.Event,
        KindSymbol { Kind: MeasureKind } => NameSort.Measure,
        KindSymbol => NameSort.Test,
        FactSymbol => NameSort.Fact,
        SpellSymbol => NameSort.Spell,
        DefineSymbol => NameSort.Define,
        DateSymbol => NameSort.Date,
        _ => NameSort.BuiltIn,
    };

    /// <summary>The declared words that an animal's result or fact may have; none for the other names.</summary>
    public static IReadOnlyList<string> Words(Symbol symbol) => symbol switch
    {
        KindSymbol { Kind: TestKind test } => test.Answers,
        FactSymbol { Fact: var fact } => fact.Values,
        _ => [],
    };

    /// <summary>One of those words as a thing; null where it is none of them.</summary>
    public static NamedThing? Word(Symbol symbol, string word)
    {
        var folded = NameFolding.Fold(word);
        return Words(symbol).Any(other => NameFolding.Fold(other) == folded)
            ? NamedThing.Of(symbol is FactSymbol ? NameSort.Value : NameSort.Answer, folded, symbol.Name)
            : null;
    }
}
