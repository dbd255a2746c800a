using Byrelaw.Records.Building;

namespace Byrelaw.Records.Doubts;

/// <summary>Two calvings nearer to each other than a cow can carry a calf: whether the later one is true is not known.</summary>
internal static class CalvedAgainSoon
{
    public static IEnumerable<Doubt> Find(Herd herd)
    {
        if (herd.Vocabulary.Calving is not { } calving)
        {
            yield break;
        }

        RowInDoubt[] doubted = [.. herd.Doubted.OfType<RowsInDoubt>().Where(rows => rows.Why == RowDoubt.CalvedAgainSoon).SelectMany(rows => rows.Rows)];
        var hers = doubted.ToLookup(row => row.Animal);
        foreach (var row in doubted)
        {
            if (Before(herd.Runs[calving.Id], [.. hers[row.Animal]], row) is var (day, line) && day > row.Day - CalvingsTooNear.FewestDays)
            {
                yield return new Doubt(
                    "R0201", row.Line, DoubtfulCell.Date,
                    $"{herd.Numbers[row.Animal]} calved {Entries.Count(row.Day - day, "day", "days")} after she calved on {Entries.Iso(day)} (line {line})",
                    $"expected {CalvingsTooNear.FewestDays} days or more between calvings",
                    "check her number and both dates; a calf lost early is an abortion");
            }
        }
    }

    /// <summary>The calving before it, believed or not.</summary>
    private static (int Day, int Line) Before(KindRun run, RowInDoubt[] doubted, RowInDoubt row) =>
        Entries.Of(run, row.Animal).Select(place => (Day: run.Days[place], Line: run.Lines[place]))
            .Concat(doubted.Select(other => (other.Day, other.Line)))
            .Where(other => other.Day < row.Day).OrderBy(other => other.Day).ThenByDescending(other => other.Line).LastOrDefault((Day.Start, 0));
}
