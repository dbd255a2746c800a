namespace Byrelaw.Language.Reasoning.Claims;

/// <summary>Results of measures and tests, her own and her mob's. Where nothing was found, nothing is true and nothing false.</summary>
internal sealed class LookupClaims(Quantities quantities, Happenings happenings, WindowClaims windows, FactClaims facts)
{
    // Averages are rounded before they are compared.
    private const double Rounding = 1e-8;

    /// <summary>The quantity (or text) "her latest result"; the windows are empty where they end on the day of judging, for then it is the same for all.</summary>
    public sealed record LatestKey(int Kind, string Windows);

    /// <summary>The quantity "lowest, highest, average or change in the windows".</summary>
    public sealed record OverKey(Aggregate Aggregate, int Measure, string Windows);

    /// <summary>The same over her mob.</summary>
    private sealed record MobKey(Aggregate Aggregate, int Measure, string Windows);

    /// <summary>How many of her mob have such a value.</summary>
    private sealed record MobCountKey(int Measure, NumberTest Test, string Windows);

    public Claim Of(TestCondition condition, bool isTrue)
    {
        var test = condition.Test;
        var values = condition.Answers.Select(answer => NameFolding.Fold(test.Answers[answer])).ToList();
        var text = quantities.Text(new LatestKey(test.Id, LatestWindows(condition.Windows)), [.. test.Answers.Select(NameFolding.Fold)]);
        var found = InWindow(test, condition.Windows, condition).And(Claim.Of(new OneOf(text, values, condition.IsNot == isTrue, condition)));

        // An answer that was surely given was given on some day of the window; that can be counted.
        return condition.IsNot != isTrue && condition.Answers.Length == 1
            ? found.And(windows.Some(happenings.Of(test, condition.Answers[0]), condition.Windows, condition))
            : found;
    }

    public Claim Of(MeasuredCondition condition, bool isTrue)
    {
        var quantity = condition.Aggregate == Aggregate.Latest
            ? Latest(condition.Measure, LatestWindows(condition.Windows))
            : Over(condition.Aggregate, condition.Measure, condition.Windows);
        return InWindow(condition.Measure, condition.Windows, condition).And(facts.Compare(quantity, condition.Test, condition, isTrue));
    }

    public Claim Of(MobMeasuredCondition condition, bool isTrue)
    {
        var quantity = quantities.Number(
            new MobKey(condition.Aggregate, condition.Measure.Id, WindowKey.Of(condition.Windows)), number => OnScale(number, condition.Measure));
        return facts.Compare(quantity, condition.Test, condition, isTrue);
    }

    public Claim Of(MobCountCondition condition, bool isTrue)
    {
        var count = quantities.Number(
            new MobCountKey(condition.Measure.Id, condition.Test, WindowKey.Of(condition.Windows)), number => [Bound.Above(number, 0, null)]);
        var stretch = NumberStretch.Of(condition.Count);
        return isTrue ? stretch.Holds(count, condition)
            : new NumberStretch(double.NegativeInfinity, stretch.Low - 1).Holds(count, condition)
                .Or(double.IsInfinity(stretch.High) ? Claim.Never : new NumberStretch(stretch.High + 1, double.PositiveInfinity).Holds(count, condition));
    }

    private Claim InWindow(Kind kind, ImmutableArray<Window> shown, Condition from) =>
        WindowClaims.CanHold(shown, kind) ? windows.Some(happenings.Of(kind), shown, from) : Claim.Never;

    private static string LatestWindows(ImmutableArray<Window> shown) => WindowClaims.EndToday(shown) ? "" : WindowKey.Of(shown);

    private int Latest(MeasureKind measure, string shown) =>
        quantities.Number(new LatestKey(measure.Id, shown), number => OnScale(number, measure));

    private int Over(Aggregate aggregate, MeasureKind measure, ImmutableArray<Window> shown)
    {
        var key = WindowKey.Of(shown);
        return quantities.Number(new OverKey(aggregate, measure.Id, key), number =>
        {
            if (aggregate == Aggregate.Change)
            {
                return measure.Scale is { } scale
                    ? [Bound.Above(number, scale.From - scale.To, null), Bound.Below(number, scale.To - scale.From, null)]
                    : [];
            }

            var latest = Latest(measure, LatestWindows(shown));
            var relations = OnScale(number, measure);
            switch (aggregate)
            {
                case Aggregate.Lowest:
                    relations.Add(Bound.Longer(latest, number, default, null));
                    break;
                case Aggregate.Highest:
                    relations.Add(Bound.Longer(number, latest, default, null));
                    relations.Add(Bound.Longer(number, Over(Aggregate.Lowest, measure, shown), default, null));
                    break;
                default:
                    relations.Add(new Bound(Over(Aggregate.Lowest, measure, shown), number, Rounding, 0, null, null));
                    relations.Add(new Bound(number, Over(Aggregate.Highest, measure, shown), Rounding, 0, null, null));
                    break;
            }

            return relations;
        });
    }

    private static List<Bound> OnScale(int number, MeasureKind measure) =>
        measure.Scale is { } scale ? [Bound.Above(number, scale.From, null), Bound.Below(number, scale.To, null)] : [];
}
