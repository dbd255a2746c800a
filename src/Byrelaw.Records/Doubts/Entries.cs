using NodaTime.Text;

namespace Byrelaw.Records.Doubts;

/// <summary>Goes through what is on record, and puts it into words.</summary>
internal static class Entries
{
    /// <summary>The places of one animal's entries.</summary>
    public static IEnumerable<int> Of(KindRun run, int animal) => Enumerable.Range(run.Starts[animal], run.Starts[animal + 1] - run.Starts[animal]);

    /// <summary>Every animal with entries of a kind.</summary>
    public static IEnumerable<(int Animal, KindRun Run)> Animals(Herd herd, Kind kind)
    {
        var run = herd.Runs[kind.Id];
        for (var animal = 0; animal < herd.Count; animal++)
        {
            if (run.Starts[animal] < run.Starts[animal + 1])
            {
                yield return (animal, run);
            }
        }
    }

    /// <summary>A day as the files write it.</summary>
    public static string Iso(int day) => LocalDatePattern.Iso.Format(Day.Date(day));

    /// <summary>A number of days, weeks or whatever, in the singular or the plural.</summary>
    public static string Count(int count, string one, string many) => count == 1 ? $"1 {one}" : $"{count} {many}";
}
