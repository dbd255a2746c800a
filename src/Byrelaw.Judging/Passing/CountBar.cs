namespace Byrelaw.Judging.Passing;

/// <summary>
/// Of a count that may be too high: where so many entries stand on record in the widest window that there may be, something is there, though nobody knows from when on it counts. A device that
/// went in is no silence because nobody promised to write down the last that came out.
/// </summary>
/// <param name="days">The herd.</param>
/// <param name="condition">What is counted.</param>
/// <param name="windows">Where.</param>
/// <param name="own">What else may bar it.</param>
internal sealed class CountBar(HerdDays days, CountCondition condition, WindowSet windows, Bar own) : Bar
{
    private readonly int _most = condition.Test.Comparison switch
    {
        Comparison.AtMost or Comparison.Exactly => condition.Test.Low,
        Comparison.LessThan => condition.Test.Low - 1,
        Comparison.Between => condition.Test.High,
        _ => int.MaxValue,
    };

    private readonly (int Kind, byte[] Answers)[] _counted = [.. EntryCounter.Kinds(condition.Counted)];

    public override bool May(int animal) => own.May(animal) || (_most < int.MaxValue && Found(animal, Day.End, null) > _most);

    public override bool Is(int animal, int day)
    {
        if (own.Is(animal, day))
        {
            return true;
        }

        var until = int.MaxValue;
        return _most < int.MaxValue && Found(animal, day, windows.Read(animal, day, ref until, null)) > _most;
    }

    /// <summary>How many stand there up to a day, in the days of a reading where they are known: each answer of a day once.</summary>
    private int Found(int animal, int day, WindowSet.Reading? reading)
    {
        var found = 0;
        foreach (var (kind, answers) in _counted)
        {
            var (low, high) = (Day.Start, day);
            if (reading is { IsKnown: true } known)
            {
                var bounds = windows.For(kind, known);
                (low, high) = (bounds.Low, bounds.High);
            }

            found += Found(days.Herd.Runs[kind], animal, answers, low, high);
        }

        return found;
    }

    private static int Found(KindRun run, int animal, byte[] answers, int low, int high)
    {
        var found = 0;
        for (var place = Runs.LastAtMost(run, animal, high); place >= run.Starts[animal] && run.Days[place] >= low; place--)
        {
            if ((answers.Length == 0 || Array.IndexOf(answers, run.Answers[place]) >= 0) && !StandsAbove(run, animal, place))
            {
                found++;
            }
        }

        return found;
    }

    /// <summary>Whether the same stands there of that day already.</summary>
    private static bool StandsAbove(KindRun run, int animal, int place)
    {
        for (var above = place - 1; above >= run.Starts[animal] && run.Days[above] == run.Days[place]; above--)
        {
            if (run.Answers.Length == 0 || run.Answers[above] == run.Answers[place])
            {
                return true;
            }
        }

        return false;
    }
}
