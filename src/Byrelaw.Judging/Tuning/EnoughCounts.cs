namespace Byrelaw.Judging.Tuning;

/// <summary>A count that no animal of the herd can pass.</summary>
internal static class EnoughCounts
{
    public static int For(Herd herd, RuleNumber number) => 2 + (number.Number.Part switch
    {
        NumberPart.OfTheList => number.Condition.Items.Length,
        NumberPart.OfTheMob or NumberPart.Sampled => new ConditionParts(number.Condition).Kinds.OfType<MeasureKind>().Sum(measure => OfTheMob(herd, measure)),
        _ => number.Condition switch
        {
            CountCondition count => MostOn(herd, count),
            ApartCondition => ApartCondition.Most,
            ParityCondition => MostCalvings(herd),
            _ => throw MissingKind.Of(number.Condition, nameof(EnoughCounts)),
        },
    });

    /// <summary>Each entry of a kind, once for each of its answers that count.</summary>
    private static int MostOn(Herd herd, CountCondition count)
    {
        var most = 0;
        for (var animal = 0; animal < herd.Count; animal++)
        {
            most = Math.Max(most, count.Counted.Sum(counted => herd.Runs[counted.Kind.Id].DaysOf(animal).Length));
        }

        return most;
    }

    private static int MostCalvings(Herd herd)
    {
        var calving = herd.Vocabulary.Calving;
        var most = 0;
        for (var animal = 0; animal < herd.Count; animal++)
        {
            var calvings = calving is null ? [] : herd.Runs[calving.Id].DaysOf(animal);
            most = Math.Max(most, Math.Max(calvings.Length, herd.RecordedParity[animal] + Since(calvings, herd.DayOfParity(animal))));
        }

        return most;
    }

    private static int Since(ReadOnlySpan<int> days, int day)
    {
        var since = 0;
        foreach (var one in days)
        {
            since += one > day ? 1 : 0;
        }

        return since;
    }

    /// <summary>Every animal with a result, and every row of a mob, which stands for one more.</summary>
    private static int OfTheMob(Herd herd, MeasureKind measure)
    {
        var run = herd.Runs[measure.Id];
        return Enumerable.Range(0, herd.Count).Count(animal => run.DaysOf(animal).Length > 0) + (herd.MobRuns[measure.Id]?.Days.Length ?? 0);
    }
}
