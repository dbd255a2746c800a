namespace Byrelaw.Records.Doubts;

/// <summary>Two calvings nearer to each other than a cow can carry a calf. Common practice, no source: a cow
/// carries about 282 days; 200 leaves room for a calf born long before its time.</summary>
internal static class CalvedAgainSoon
{
    private const int FewestDays = 200;

    public static IEnumerable<Doubt> Find(Herd herd)
    {
        if (herd.Vocabulary.Calving is not { } calving)
        {
            yield break;
        }

        foreach (var (animal, run) in Entries.Animals(herd, calving))
        {
            foreach (var i in Entries.Of(run, animal).Skip(1))
            {
                var days = run.Days[i] - run.Days[i - 1];
                if (days < FewestDays)
                {
                    yield return new Doubt(
                        "R0201", run.Lines[i], DoubtfulCell.Date,
                        $"{herd.Numbers[animal]} calved {Entries.Count(days, "day", "days")} after she calved on {Entries.Iso(run.Days[i - 1])} (line {run.Lines[i - 1]})",
                        $"expected {FewestDays} days or more between calvings",
                        "check her number and both dates; a calf lost early is an abortion");
                }
            }
        }
    }
}
