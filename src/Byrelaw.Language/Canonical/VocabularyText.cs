namespace Byrelaw.Language.Canonical;

/// <summary>Declarations the one way, a line each.</summary>
internal static class VocabularyText
{
    /// <summary>All of them, by sort and then by name.</summary>
    public static IEnumerable<string> Of(Vocabulary vocabulary) =>
        Sorted(vocabulary.Kinds.OfType<EventKind>().Where(kind => !kind.IsMobMove), kind => kind.Name, Of)
            .Concat(Sorted(vocabulary.Kinds.OfType<MeasureKind>(), kind => kind.Name, Of))
            .Concat(Sorted(vocabulary.Kinds.OfType<TestKind>(), kind => kind.Name, Of))
            .Concat(Sorted(vocabulary.Facts, fact => fact.Name, Of))
            .Concat(Sorted(vocabulary.Spells, spell => spell.Name, Of));

    /// <summary>One kind.</summary>
    public static string Of(Kind kind) => kind switch { EventKind happening => Of(happening), MeasureKind measure => Of(measure), TestKind test => Of(test), _ => kind.Name };

    /// <summary>One fact.</summary>
    public static string Of(Fact fact) => Line($"fact {NameText.Exact(fact.Name)} {Type(fact)}", Also(fact.AlsoNames));

    /// <summary>One spell.</summary>
    public static string Of(Spell spell) =>
        $"spell {NameText.Exact(spell.Name)} from {NameText.Exact(spell.From.Name)} until {NameText.Exact(spell.Until.Name)}";

    private static IEnumerable<string> Sorted<T>(IEnumerable<T> words, Func<T, string> name, Func<T, string> print) =>
        words.OrderBy(word => NameFolding.Fold(name(word)), StringComparer.Ordinal).Select(print);

    private static string Of(EventKind kind) => Line(
        $"event {NameText.Exact(kind.Name)}",
        Also(kind.AlsoNames),
        kind.NotBeforeAge is { } age ? $"not before {age} of age" : null,
        kind.Effect switch { HerdEffect.Joins => "joins the herd", HerdEffect.Leaves => "leaves the herd", _ => null });

    private static string Of(MeasureKind kind) => Line(
        $"measure {NameText.Exact(kind.Name)} " +
            (kind.Unit is { } unit ? $"in {unit.Symbol}" : $"on scale {NumberText.Of(kind.Scale!.From)} to {NumberText.Of(kind.Scale.To)}"),
        kind.MolarMass is { } mass ? $"molar mass {NumberText.Of(mass)}" : null,
        kind.InTheYards && !IsInTheYardsAnyway(kind) ? "in the yards" : null,
        Also(kind.AlsoNames));

    private static string Of(TestKind kind) => Line(
        $"test {NameText.Exact(kind.Name)} answers {Names(kind.Answers)}",
        kind.InTheYards ? "in the yards" : null,
        Also(kind.AlsoNames));

    private static string Type(Fact fact) => fact.Type switch
    {
        FactType.OneOf => $"is one of {Names(fact.Values)}",
        FactType.Amount => $"in {fact.Unit!.Symbol}",
        FactType.Number => "is number",
        FactType.Date => "is date",
        FactType.Identity => "is identity",
        _ => "is text",
    };

    private static bool IsInTheYardsAnyway(MeasureKind kind) =>
        kind.Unit is null || kind.Unit.Quantity is Quantity.Mass or Quantity.Length or Quantity.Temperature;

    private static string? Also(IReadOnlyCollection<string> names) => names.Count == 0 ? null : $"also {Names(NameText.Sorted(names))}";

    private static string Names(IEnumerable<string> names) => string.Join(", ", names.Select(NameText.Exact));

    private static string Line(string start, params string?[] clauses) => string.Join(", ", clauses.OfType<string>().Prepend(start));
}
