namespace Byrelaw.Records.Doubts;

/// <summary>Two different results of one measure or test on one day.</summary>
internal static class TwoResultsOnOneDay
{
    public static IEnumerable<Doubt> Find(Herd herd)
    {
        foreach (var kind in herd.Vocabulary.Kinds.Where(kind => kind is MeasureKind or TestKind))
        {
            foreach (var (animal, run) in Entries.Animals(herd, kind))
            {
                foreach (var i in Entries.Of(run, animal).Skip(1).Where(i => run.Days[i] == run.Days[i - 1] && Differ(run, i, i - 1)))
                {
                    yield return new Doubt(
                        "R0206", run.Lines[i], DoubtfulCell.Value,
                        $"another {kind.Name} of {herd.Numbers[animal]} on that day says something else (line {run.Lines[i - 1]})",
                        "expected one result a day",
                        "remove the wrong one; until then a rule holds only if it holds for both");
                }
            }
        }
    }

    private static bool Differ(KindRun run, int a, int b) => run.Answers.Length > 0
        ? run.Answers[a] != run.Answers[b] && run.Answers[a] != KindRun.NotKnown && run.Answers[b] != KindRun.NotKnown
        : run.High[a] < run.Low[b] || run.High[b] < run.Low[a];
}
