namespace Byrelaw.Judging.Tuning;

/// <summary>Puts all animals' answers together: a step ends where the first of them changes hers.</summary>
internal static class TuningSteps
{
    public static ImmutableArray<TuningStep> Of(IReadOnlyList<TunedAnimal> animals, IReadOnlyList<TriedValue> trials)
    {
        // Every run starts where a trial does, and every animal's runs start with the first trial.
        var starts = animals.SelectMany(animal => animal.Runs.Skip(1).Select(run => run.Range.From!.Value)).ToHashSet();
        var steps = ImmutableArray.CreateBuilder<TuningStep>();
        var places = new int[animals.Count];
        var from = 0;
        for (var trial = 1; trial <= trials.Count; trial++)
        {
            if (trial < trials.Count && !starts.Contains(trials[trial].Range.From!.Value))
            {
                continue;
            }

            steps.Add(new TuningStep(new ValueRange(trials[from].Range.From, trials[trial - 1].Range.To), Count(animals, places, trials[from].Value)));
            from = trial;
        }

        return steps.ToImmutable();
    }

    private static ImmutableArray<int> Count(IReadOnlyList<TunedAnimal> animals, int[] places, decimal value)
    {
        var counts = new int[Enum.GetValues<Answer>().Length];
        for (var animal = 0; animal < animals.Count; animal++)
        {
            var runs = animals[animal].Runs;
            while (!runs[places[animal]].Range.Holds(value))
            {
                places[animal]++;
            }

            counts[(int)runs[places[animal]].Answer]++;
        }

        return [.. counts];
    }
}
