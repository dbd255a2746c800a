using Byrelaw.Judging.Days;

namespace Byrelaw.Judging.Tests.Bounds;

/// <summary>A run of any length, short enough to be walked or so long that it is halved, is searched as walking through all of it would.</summary>
public sealed class RunsTests
{
    [Fact]
    public void The_last_entry_on_or_before_a_day_is_found_in_a_run_of_any_length() => Gen.Select(Gen.Int[0, 60], Gen.Int[0, 80], Gen.Int[0, 3])
        .SelectMany((before, own, after) => Gen.Select(Sorted(before), Sorted(own), Sorted(after)))
        .Hold((before, own, after) =>
        {
            var run = new KindRun
            {
                Starts = [0, before.Length, before.Length + own.Length, before.Length + own.Length + after.Length],
                Days = [.. before, .. own, .. after],
                Lines = [],
            };
            for (var day = -1; day <= Latest + 1; day++)
            {
                // Walked from the front, where the search begins at the back or in the middle.
                var expected = before.Length - 1 + own.Count(entry => entry <= day);
                Runs.LastAtMost(run, 1, day).ShouldBe(expected, $"day {day} of {string.Join(' ', own)}");
                Runs.LastAtMost(run.Days, before.Length, before.Length + own.Length - 1, day).ShouldBe(expected, $"day {day} of {string.Join(' ', own)}, halved");
            }
        }, count: 200);

    private const int Latest = 100;

    /// <summary>Days in order, some of them twice.</summary>
    private static Gen<int[]> Sorted(int count) => Gen.Int[0, Latest].Array[count].Select(days => days.Order().ToArray());
}
