namespace Byrelaw.Judging.Tuning;

/// <summary>Which steps begin something new: going away from the value in force, the first step with other animals that may be used.</summary>
public static class UsableBands
{
    /// <summary>Those steps below the value in force, nearest first; or, where no value changes who may be used, the steps at which any answer changes.</summary>
    public static IReadOnlyList<int> Below(NumberTuning tuning) => Away(tuning, -1);

    /// <summary>The same above.</summary>
    public static IReadOnlyList<int> Above(NumberTuning tuning) => Away(tuning, +1);

    /// <summary>Whether any value lets an animal in or keeps one out.</summary>
    public static bool Any(NumberTuning tuning)
    {
        ArgumentNullException.ThrowIfNull(tuning);
        return tuning.Animals.Any(animal => animal.Runs.Select(run => run.Answer.MayBeUsed()).Distinct().Count() > 1);
    }

    private static List<int> Away(NumberTuning tuning, int way)
    {
        ArgumentNullException.ThrowIfNull(tuning);
        var (any, found, last) = (Any(tuning), new List<int>(), tuning.CurrentStep);
        for (var step = last + way; step >= 0 && step < tuning.Steps.Length; step += way)
        {
            if (!any || tuning.Changes(last, step).Any(change => change.IsLetIn || change.IsKeptOut))
            {
                found.Add(step);
                last = step;
            }
        }

        return found;
    }
}
