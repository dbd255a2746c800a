namespace Byrelaw.Checking.Comparing;

/// <summary>What a rule speaks of, and where its limits lie: from these made-up animals are put together, so that they sit on the limits.</summary>
internal sealed class Ingredients
{
    private readonly Rulebook _rulebook;

    public Ingredients(Rulebook rulebook)
    {
        _rulebook = rulebook;
        foreach (var rule in rulebook.Rules)
        {
            Add(rule.Needs);
            if (rule.AppliesTo is { } named)
            {
                Add(named);
            }
        }
    }

    /// <summary>Kinds of records.</summary>
    public HashSet<Kind> Kinds { get; } = [];

    /// <summary>Lengths of time that something turns on.</summary>
    public HashSet<TimeLength> Lengths { get; } = [];

    /// <summary>Ages that something turns on.</summary>
    public HashSet<TimeLength> Ages { get; } = [];

    /// <summary>Counts of calvings that something turns on.</summary>
    public HashSet<int> Parities { get; } = [];

    /// <summary>Values of measures that something turns on.</summary>
    public Dictionary<MeasureKind, HashSet<double>> Values { get; } = [];

    /// <summary>Facts, and the texts that something turns on.</summary>
    public Dictionary<Fact, HashSet<string>> Facts { get; } = [];

    /// <summary>Whether the rule looks at others beside her, which one made-up animal cannot show.</summary>
    public bool LooksAtOthers { get; private set; }

    private void Add(Condition condition)
    {
        foreach (var leaf in condition.Leaves(_rulebook))
        {
            var parts = new ConditionParts(leaf);
            LooksAtOthers |= leaf.LooksAtOthers;
            if (!leaf.LooksAtOthers)
            {
                Kinds.UnionWith(parts.Kinds);
                Kinds.UnionWith(parts.WindowKinds);
                (leaf is AgeCondition ? Ages : Lengths).UnionWith(
                    parts.Numbers.Where(number => number.Sort == NumberSort.Time).Select(number => new TimeLength((int)number.Value, number.TimeUnit)));
                AddValues(leaf);
            }
        }
    }

    /// <summary>Parities, values of measures and facts about the limits of a condition.</summary>
    private void AddValues(Condition condition)
    {
        switch (condition)
        {
            case ParityCondition parity:
                Parities.UnionWith([parity.Test.Low, parity.Test.High]);
                break;
            case FactNumberCondition fact:
                Add(fact.Fact, Around(fact.Test).Select(Text));
                break;
            case FactTextCondition fact:
                Add(fact.Fact, fact.Fact.Type == FactType.OneOf ? fact.Fact.Values : [.. fact.Values, "another"]);
                break;
            case FactDateCondition fact:
                Add(fact.Fact, [Iso(fact.Date), Iso(fact.Date.PlusDays(1))]);
                break;
            case MeasuredCondition measured:
                Add(measured.Measure, measured.Test);
                break;
            case SeriesCondition { Of: MeasureKind measure, Test: { } test }:
                Add(measure, test);
                break;
            default:
                foreach (var fact in new ConditionParts(condition).Facts)
                {
                    Add(fact, [fact.Type switch { FactType.OneOf => fact.Values[0], FactType.Date => "2024-06-01", FactType.Number or FactType.Amount => "1", _ => "tag 1" }]);
                }

                break;
        }
    }

    private void Add(MeasureKind measure, NumberTest test)
    {
        if (!Values.TryGetValue(measure, out var values))
        {
            Values[measure] = values = [];
        }

        values.UnionWith(Around(test).Where(value => measure.Scale is not { } scale || (value >= scale.From && value <= scale.To)));
        foreach (var fact in new[] { test.Low.PercentOf, test.High.PercentOf }.OfType<Fact>())
        {
            Add(fact, ["500"]);
            values.UnionWith([5 * test.Low.Value, (5 * test.Low.Value) - 1, 5 * test.High.Value]);
        }
    }

    private void Add(Fact fact, IEnumerable<string> texts)
    {
        if (!Facts.TryGetValue(fact, out var known))
        {
            Facts[fact] = known = [""];
        }

        known.UnionWith(texts);
    }

    private static IEnumerable<double> Around(NumberTest test) =>
        new[] { test.Low.Value, test.High.Value }.SelectMany(limit => new[] { limit, limit - Step(limit), limit + Step(limit) });

    private static double Step(double limit) => Math.Abs(limit) >= 10 ? 1 : 0.1;

    /// <summary>A number as a cell has it.</summary>
    public static string Text(double value) => Math.Round(value, 6).ToString("0.######", System.Globalization.CultureInfo.InvariantCulture);

    private static string Iso(LocalDate date) => NodaTime.Text.LocalDatePattern.Iso.Format(date);
}
