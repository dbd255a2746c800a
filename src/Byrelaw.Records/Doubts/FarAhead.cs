namespace Byrelaw.Records.Doubts;

/// <summary>One day that lies more than a year after all others, where that day says how far the records reach.</summary>
internal static class FarAhead
{
    private const int LongestGap = 366;

    public static IEnumerable<Doubt> Find(Herd herd)
    {
        var (latest, latestLine, before) = (Day.Start, 0, Day.Start);
        foreach (var run in herd.Runs)
        {
            for (var i = 0; i < run.Days.Length; i++)
            {
                if (run.Days[i] > latest)
                {
                    (before, latest, latestLine) = (latest, run.Days[i], run.Lines[i]);
                }
                else if (run.Days[i] < latest)
                {
                    before = Math.Max(before, run.Days[i]);
                }
            }
        }

        if (latest == herd.Coverage.KnownDay && before > Day.Start && latest - before > LongestGap)
        {
            yield return new Doubt(
                "R0210", latestLine, DoubtfulCell.Date,
                $"{Entries.Iso(latest)} lies more than a year after every other day on record, and the records are taken to reach it",
                "expected a day near the others", "correct the date, or say how far the records reach: `up to` under `records`");
        }
    }
}
