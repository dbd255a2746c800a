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
            .Concat(Sorted(vocabulary.Spells, spell => spell.Name, Of))
            .Concat(Calls(vocabulary).Select(call => $"call {NameText.Exact(call.What)} also {NameText.Exact(call.Name)}").Distinct().Order(StringComparer.Ordinal));

    /// <summary>Other names of what no line of the files declares by itself: built-in names and answers.</summary>
    private static IEnumerable<(string What, string Name)> Calls(Vocabulary vocabulary) =>
        vocabulary.Called.Select(called => (called.BuiltIn, called.Name))
            .Concat(vocabulary.Kinds.OfType<TestKind>().SelectMany(test => test.AnswersAlso.Select(also => (test.Answers[also.Answer], also.Name))));

    /// <summary>One kind.</summary>
    public static string Of(Kind kind) => kind switch { EventKind happening => Of(happening), MeasureKind measure => Of(measure), TestKind test => Of(test), _ => kind.Name };

    /// <summary>One fact.</summary>
    public static string Of(Fact fact) => Line($"fact {NameText.Exact(fact.Name)} {Type(fact)}", Plausible(fact.Plausible), Also(fact.AlsoNames));

    /// <summary>One spell.</summary>
    public static string Of(Spell spell) =>
        $"spell {NameText.Exact(spell.Name)} from {NameText.Exact(spell.From.Name)} until {NameText.Exact(spell.Until.Name)}"
        + (spell.WithMaleFrom is { } age ? $", or in a mob with a male from {age} of age" : "");

    private static IEnumerable<string> Sorted<T>(IEnumerable<T> words, Func<T, string> name, Func<T, string> print) =>
        words.OrderBy(word => NameFolding.Fold(name(word)), StringComparer.Ordinal).Select(print);

    private static string Of(EventKind kind) => Line(
        $"event {NameText.Exact(kind.Name)}",
        Also(kind.AlsoNames),
        kind.NotBeforeAge is { } age ? $"not before {age} of age" : null,
        kind.Effect switch { HerdEffect.Joins => "joins the herd", HerdEffect.Leaves when kind.IsForGood => "leaves the herd for good", HerdEffect.Leaves => "leaves the herd", _ => null },
        kind.Marks == Marks.Nothing ? null : $"marks {kind.Marks.ToString().ToLowerInvariant()}",
        kind.IsOfEmbryos ? "of embryos" : null,
        Details(kind));

    private static string Of(MeasureKind kind) => Line(
        $"measure {NameText.Exact(kind.Name)} " +
            (kind.Unit is { } unit ? $"in {unit.Symbol}" : $"on scale {NumberText.Of(kind.Scale!.From)} to {NumberText.Of(kind.Scale.To)}"),
        kind.MolarMass is { } mass ? $"molar mass {NumberText.Of(mass)}" : null,
        kind.InTheYards && !IsInTheYardsAnyway(kind) ? "in the yards" : null,
        Plausible(kind.Plausible),
        Also(kind.AlsoNames),
        Details(kind));

    private static string Of(TestKind kind) => Line(
        $"test {NameText.Exact(kind.Name)} answers {Names(kind.Answers)}",
        kind.InTheYards ? "in the yards" : null,
        Also(kind.AlsoNames),
        Details(kind));

    private static string Type(Fact fact) => fact.Type switch
    {
        FactType.OneOf => $"is one of {Names(fact.Values)}",
        FactType.Amount => $"in {fact.Unit!.Symbol}",
        FactType.Number => "is number",
        FactType.Date => "is date",
        FactType.Identity => "is identity",
        _ => "is text",
    };

    /// <summary>The details, in the order of writing: in each other order they would read the same, but a layer adds its own at the end.</summary>
    private static string? Details(Kind kind) => kind.Details.IsEmpty ? null : string.Join(", ", kind.Details.Select(Of));

    private static string Of(EntryDetail detail) =>
        $"with {NameText.Exact(detail.Name)} {Type(detail)}" + (detail.BlankIs >= 0 ? $", blank is {NameText.Exact(detail.Values[detail.BlankIs])}" : "");

    private static string Type(EntryDetail detail) => detail.Scale is { } scale
        ? $"on scale {NumberText.Of(scale.From)} to {NumberText.Of(scale.To)}"
        : Type(new Fact(detail.Name, [], detail.Declared) { Id = 0, Type = detail.Type, Values = detail.Values, Unit = detail.Unit });

    private static string? Plausible(Scale? plausible) =>
        plausible is { } range ? $"plausible {NumberText.Of(range.From)} to {NumberText.Of(range.To)}" : null;

    private static bool IsInTheYardsAnyway(MeasureKind kind) =>
        kind.Unit is null || kind.Unit.Quantity is Quantity.Mass or Quantity.Length or Quantity.Temperature;

    private static string? Also(IReadOnlyCollection<string> names) => names.Count == 0 ? null : $"also {Names(NameText.Sorted(names))}";

    private static string Names(IEnumerable<string> names) => string.Join(", ", names.Select(NameText.Exact));

    private static string Line(string start, params string?[] clauses) => string.Join(", ", clauses.OfType<string>().Prepend(start));
}
