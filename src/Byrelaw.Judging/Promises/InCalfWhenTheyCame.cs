namespace Byrelaw.Judging.Promises;

/// <summary>
/// Animals that joined the herd in calf, by a test on record from before that found a calf, or may have. A calf does not end by a sale or a purchase: until
/// she has calved or slipped it, whether a test found one since she came is not known, so that a hand cannot clear her.
/// </summary>
internal static class InCalfWhenTheyCame
{
    /// <summary>Each joining, by animal and day.</summary>
    public static List<Joining> Find(Herd herd)
    {
        var found = new List<Joining>();
        if (herd.Vocabulary.FindKind("pregnancy test") is not TestKind test || test.Answers.IndexOf("pregnant") is not (>= 0 and var pregnant))
        {
            return found;
        }

        int[] joins = [.. herd.Vocabulary.Kinds.Where(kind => kind is EventKind { Effect: HerdEffect.Joins }).Select(kind => kind.Id)];
        int[] ends = [.. new Kind?[] { herd.Vocabulary.Calving, herd.Vocabulary.FindKind("abortion") }.OfType<Kind>().Select(kind => kind.Id)];
        var mayBe = herd.Coverage.Gaps.Where(gap => gap.Kind == test.Id || gap.Kind < 0).ToLookup(gap => gap.Animal);
        for (var animal = 0; animal < herd.Count; animal++)
        {
            foreach (var kind in herd.Sexes[animal] is Sex.Male or Sex.Steer ? [] : joins)
            {
                var run = herd.Runs[kind];
                for (var place = run.Starts[animal]; place < run.Starts[animal + 1]; place++)
                {
                    var came = run.Days[place];
                    var (since, until) = Between(herd, ends, animal, came);
                    if (FoundCalf(herd, test, pregnant, animal, since, came) || mayBe[animal].Concat(mayBe[-1]).Any(gap => gap.From <= came && gap.To > since))
                    {
                        found.Add(new Joining(animal, came, until, run.Lines[place]));
                    }
                }
            }
        }

        return found;
    }

    /// <summary>Tests are not known of them until they calve or slip it.</summary>
    public static IEnumerable<Hole> Holes(Herd herd, List<Joining> found) =>
        found.Select(one => new Hole(one.Animal, herd.Vocabulary.FindKind("pregnancy test")!.Id, one.Day, one.Until, IsDoubt: true));

    /// <summary>What is said of them.</summary>
    public static RowsInDoubt Doubt(List<Joining> found) => new(RowDoubt.InCalfWhenSheCame, [.. found.Select(one => new RowInDoubt(one.Animal, one.Day, one.Line))]);

    private static bool FoundCalf(Herd herd, TestKind test, int pregnant, int animal, int since, int came)
    {
        var run = herd.Runs[test.Id];
        for (var place = run.Starts[animal]; place < run.Starts[animal + 1]; place++)
        {
            if (run.Days[place] >= since && run.Days[place] <= came && (run.Answers[place] == pregnant || run.Answers[place] == KindRun.NotKnown))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The day of her last calving or abortion before she came, and the day before the next.</summary>
    private static (int Since, int Until) Between(Herd herd, int[] ends, int animal, int came)
    {
        var (since, until) = (Day.Start, Day.End);
        foreach (var kind in ends)
        {
            foreach (var day in herd.Runs[kind].DaysOf(animal))
            {
                since = day < came ? Math.Max(since, day) : since;
                until = day > came ? Math.Min(until, day - 1) : until;
            }
        }

        return (since, until);
    }

    /// <summary>One that came in calf, or may have.</summary>
    /// <param name="Animal">Who.</param>
    /// <param name="Day">When she came.</param>
    /// <param name="Until">The last day on which she may carry that calf, by what is on record.</param>
    /// <param name="Line">The row that says that she came.</param>
    public readonly record struct Joining(int Animal, int Day, int Until, int Line);
}
