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
        switch (condition)
        {
            case CountCondition count:
                Kinds.UnionWith(count.Counted.Select(counted => counted.Kind));
                Add(count.Windows);
                break;
            case TimeSinceCondition since:
                Kinds.UnionWith(since.Kinds);
                Lengths.UnionWith([since.Test.Low, since.Test.High]);
                break;
            case AgeCondition age:
                Ages.UnionWith([age.Test.Low, age.Test.High]);
                break;
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
            case RecordedCondition fact:
                Add(fact.Fact, [fact.Fact.Type switch { FactType.OneOf => fact.Fact.Values[0], FactType.Date => "2024-06-01", FactType.Number or FactType.Amount => "1", _ => "tag 1" }]);
                break;
            case MeasuredCondition measured:
                Kinds.Add(measured.Measure);
                if (!Values.TryGetValue(measured.Measure, out var values))
                {
                    Values[measured.Measure] = values = [];
                }

                values.UnionWith(Around(measured.Test).Where(value => measured.Measure.Scale is not { } scale || (value >= scale.From && value <= scale.To)));
                foreach (var fact in new[] { measured.Test.Low.PercentOf, measured.Test.High.PercentOf }.OfType<Fact>())
                {
                    Add(fact, ["500"]);
                    values.UnionWith([5 * measured.Test.Low.Value, (5 * measured.Test.Low.Value) - 1, 5 * measured.Test.High.Value]);
                }

                Add(measured.Windows);
                break;
            case TestCondition test:
                Kinds.Add(test.Test);
                Add(test.Windows);
                break;
            case SpellCondition spell:
                Kinds.UnionWith([spell.Spell.From, spell.Spell.Until]);
                Add(spell.Windows);
                break;
            case NamedCondition named:
                Add(_rulebook.Defines[named.Index].Condition);
                break;
            case ListCondition list:
                list.Items.ToList().ForEach(Add);
                break;
            default:
                LooksAtOthers |= condition is not BrokenCondition;
                break;
        }
    }

    private void Add(IEnumerable<Window> windows)
    {
        foreach (var window in windows)
        {
            switch (window)
            {
                case InTheLast last:
                    Lengths.Add(last.Length);
                    break;
                case AtLeastAgo ago:
                    Lengths.Add(ago.Near);
                    break;
                case BetweenAgo ago:
                    Lengths.UnionWith([ago.Near, ago.Far]);
                    break;
                case BeforeDate before:
                    Lengths.Add(before.Length);
                    break;
                case FromAfterLast after:
                    Lengths.Add(after.Wait);
                    Kinds.UnionWith(after.Kinds);
                    break;
                case SinceLast since:
                    Kinds.UnionWith(since.Kinds);
                    break;
                default:
                    break;
            }
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
