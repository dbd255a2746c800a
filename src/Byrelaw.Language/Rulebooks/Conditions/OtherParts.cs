namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>
/// What is to stand in the place of a condition's parts. Each part stays as it is unless a method says otherwise; null says that
/// nothing can stand there, and then there is no such condition. Whoever only wants to see the parts looks at what is asked for:
/// <see cref="ConditionParts"/>.
/// </summary>
public abstract class OtherParts
{
    /// <summary>For a condition written inside another.</summary>
    public virtual Condition? Item(Condition item) => item?.With(this);

    /// <summary>For a window.</summary>
    /// <param name="window">Which.</param>
    /// <param name="place">0 for the first, 1 for the second.</param>
    public virtual Window? Window(Window window, int place) => window?.With(this, place == 0 ? NumberPart.FirstWindow : NumberPart.SecondWindow);

    /// <summary>For a kind of record.</summary>
    public virtual Kind? Kind(Kind kind) => kind;

    /// <summary>For a fact.</summary>
    public virtual Fact? Fact(Fact fact) => fact;

    /// <summary>For a spell.</summary>
    public virtual Spell? Spell(Spell spell) => spell;

    /// <summary>For a day that the condition names.</summary>
    public virtual DateReference Date(DateReference date) => date;

    /// <summary>For a defined name.</summary>
    public virtual NamedCondition? Define(NamedCondition named) => named;

    /// <summary>For a number, in the unit that it has now; whole where the number is.</summary>
    public virtual double Number(ConditionNumber number) => number?.Value ?? 0;

    /// <summary>For a measure: one on another scale cannot stand there.</summary>
    internal MeasureKind? Measure(MeasureKind measure) => Kind(measure) is MeasureKind found && found.Scale == measure.Scale ? found : null;

    /// <summary>For kinds any of which is meant.</summary>
    internal ImmutableArray<Kind>? Kinds(ImmutableArray<Kind> kinds) => All(kinds, (kind, _) => Kind(kind));

    /// <summary>For an answer of a test: the answer of the same name, where the other test has one.</summary>
    internal static int? Answer(TestKind test, int answer, TestKind found)
    {
        var at = ReferenceEquals(test, found) ? answer : found.Answers.Select(NameFolding.Fold).ToList().IndexOf(NameFolding.Fold(test.Answers[answer]));
        return at < 0 ? null : at;
    }

    /// <summary>For a demand on a count. <c>no X</c> holds no number that anybody wrote.</summary>
    internal CountTest Count(CountTest test, NumberPart part = NumberPart.Limit)
    {
        if (test.IsNone)
        {
            return test;
        }

        // At least none asks for nothing, so the least that a rule would ask for is one.
        var lowest = test.Comparison == Comparison.AtLeast ? Math.Min(1, test.Low) : 0;
        var low = new ConditionNumber(part, false, test.Low, NumberSort.Count) { Comparison = test.Comparison, Lowest = lowest };
        if (test.Comparison != Comparison.Between)
        {
            var limit = (int)Number(low);
            return test with { Low = limit, High = limit };
        }

        return test with
        {
            Low = (int)Number(low with { Highest = test.High }),
            High = (int)Number(new ConditionNumber(part, true, test.High, NumberSort.Count) { Comparison = test.Comparison, Lowest = test.Low }),
        };
    }

    /// <summary>For a number of animals sampled.</summary>
    internal int Sampled(int animals) => (int)Number(new ConditionNumber(NumberPart.Sampled, false, animals, NumberSort.Count) { Lowest = 1 });

    /// <summary>For a demand on a time.</summary>
    internal TimeTest Time(TimeTest test, NumberPart part = NumberPart.Limit)
    {
        if (test.Comparison == Comparison.Between)
        {
            var (low, high) = Lengths(test.Low, test.High, part, test.Comparison);
            return test with { Low = low, High = high };
        }

        var limit = Length(test.Low, part, test.Comparison);
        return test with { Low = limit, High = limit };
    }

    /// <summary>For one length of time.</summary>
    internal TimeLength Length(TimeLength length, NumberPart part, Comparison? comparison = null) =>
        length with { Count = (int)Number(LengthRange.One(part, length) with { Comparison = comparison }) };

    /// <summary>For two lengths of time of which neither may pass the other.</summary>
    internal (TimeLength Low, TimeLength High) Lengths(TimeLength low, TimeLength high, NumberPart part, Comparison? comparison = null)
    {
        var (first, second) = LengthRange.Two(part, low, high);
        return (low with { Count = (int)Number(first with { Comparison = comparison }) }, high with { Count = (int)Number(second with { Comparison = comparison }) });
    }

    /// <summary>For a demand on a value of a measure, said in the unit of the measure that stands there.</summary>
    /// <param name="test">In the unit of <paramref name="measure"/>.</param>
    /// <param name="measure">Of what.</param>
    /// <param name="found">The measure that stands in its place.</param>
    /// <param name="isChange">Whether the value is a difference between two.</param>
    internal NumberTest? Value(NumberTest test, MeasureKind measure, MeasureKind found, bool isChange = false)
    {
        var within = measure.Scale is { } scale && isChange ? new Scale(scale.From - scale.To, scale.To - scale.From) : measure.Scale;
        return Value(test, new ValueOf(measure.Unit, found.Unit, found.MolarMass, within, MayBeNegative: isChange));
    }

    /// <summary>For a demand on a fact that is a number, said in the unit of the fact that stands there.</summary>
    internal NumberTest? Value(NumberTest test, Fact fact, Fact found) => Value(test, new ValueOf(fact.Unit, found.Unit, null, null, MayBeNegative: true));

    private NumberTest? Value(NumberTest test, ValueOf of)
    {
        var isBetween = test.Comparison == Comparison.Between;
        var isBound = isBetween && test.Low.PercentOf == test.High.PercentOf && test.Low.Value <= test.High.Value;
        var one = of.Number(test.Low) with { Comparison = test.Comparison };
        var low = of.In(this, test.Low, isBound ? one with { Highest = test.High.Value } : one);
        if (!isBetween)
        {
            return low is null ? null : test with { Low = low, High = low };
        }

        var other = of.Number(test.High) with { Comparison = test.Comparison, IsHigh = true };
        var high = of.In(this, test.High, isBound ? other with { Lowest = test.Low.Value } : other);
        return low is null || high is null ? null : test with { Low = low, High = high };
    }

    /// <summary>All of them; null where nothing can stand in the place of one.</summary>
    internal static ImmutableArray<T>? All<T>(ImmutableArray<T> parts, Func<T, int, T?> other) where T : class
    {
        var others = ImmutableArray.CreateBuilder<T>(parts.Length);
        var isSame = true;
        for (var place = 0; place < parts.Length; place++)
        {
            if (other(parts[place], place) is not { } found)
            {
                return null;
            }

            isSame &= ReferenceEquals(found, parts[place]);
            others.Add(found);
        }

        return isSame ? parts : others.MoveToImmutable();
    }

    /// <summary>In which unit a value is said, in which it is to be said, and between what it may lie.</summary>
    private readonly record struct ValueOf(Unit? Said, Unit? Wanted, double? MolarMass, Scale? Within, bool MayBeNegative)
    {
        public ConditionNumber Number(Limit limit) => limit.PercentOf is not null
            ? new(NumberPart.Limit, false, limit.Value, NumberSort.Share) { Lowest = 0 }
            : new(NumberPart.Limit, false, limit.Value, NumberSort.Amount) { Unit = Said, Lowest = Within?.From ?? (MayBeNegative ? null : 0), Highest = Within?.To };

        public Limit? In(OtherParts others, Limit limit, ConditionNumber number)
        {
            var value = others.Number(number);
            if (limit.PercentOf is { } fact)
            {
                return others.Fact(fact) is { } found ? new Limit(value, found) : null;
            }

            double? said = Said is null && Wanted is null ? value : Said is null || Wanted is null ? null : UnitConversion.Convert(value, Said, Wanted, MolarMass);
            return said is { } known ? new Limit(known) : null;
        }
    }
}
