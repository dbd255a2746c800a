namespace Byrelaw.Records.Doubts;

/// <summary>A recorded parity that the calvings on record contradict.</summary>
internal static class ParityAgainstCalvings
{
    public static IEnumerable<Doubt> Find(Herd herd)
    {
        if (herd.Vocabulary.Calving is not { } calving)
        {
            yield break;
        }

        var run = herd.Runs[calving.Id];
        for (var animal = 0; animal < herd.Count; animal++)
        {
            var recorded = herd.RecordedParity[animal];
            var counted = run.Starts[animal + 1] - run.Starts[animal];
            var allAreThere = herd.BornEarliest[animal] > Day.Start
                && herd.Coverage.Covers(animal, calving.Id, herd.BornEarliest[animal], herd.Coverage.Reach[calving.Id], strict: true);
            if (recorded >= 0 && (counted > recorded || (allAreThere && counted < recorded)))
            {
                yield return new Doubt(
                    "R0205", herd.AnimalLines[animal], DoubtfulCell.RowOfAnimals,
                    $"parity {recorded} of {herd.Numbers[animal]}, but {Entries.Count(counted, "calving", "calvings")} on record", "expected the two to agree",
                    "correct the parity, or the rows of her calvings");
            }
        }
    }
}
