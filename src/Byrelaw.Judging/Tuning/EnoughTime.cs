namespace Byrelaw.Judging.Tuning;

/// <summary>
/// How long a length of time can be and still tell one animal from another: from the last day of the span back to the
/// first day that it can meet. A longer one reaches beyond all of them, and nothing changes any more.
/// </summary>
internal sealed class EnoughTime
{
    private readonly Herd _herd;
    private readonly RuleNumber _number;
    private readonly Window? _window;
    private readonly int _judged;
    private readonly int _last;
    private readonly int _firstOfAll;

    public EnoughTime(Herd herd, Programme programme, RuleNumber number, JudgingDays days)
    {
        (_herd, _number, _judged) = (herd, number, days.First);
        var windows = number.Condition.Windows;
        _window = number.Number.Part switch { NumberPart.FirstWindow => windows[0], NumberPart.SecondWindow => windows[1], _ => null };
        _last = Math.Max(days.SpanLast, windows.Select(window => DateOf(window, programme)).Append(Day.Start).Max());
        _firstOfAll = windows.OfType<DaysAfter>().Aggregate(FirstOfAll(days), (first, window) => Earlier(first, DateOf(window, programme)));
    }

    /// <summary>For one animal, in the number's own unit.</summary>
    public int For(int animal)
    {
        // Two days more, so that "more than" and the day after an event are within.
        var days = _last - FirstFor(animal) + 2;
        return 1 + (_number.Number.TimeUnit switch { TimeUnit.Days => days, TimeUnit.Weeks => days / 7, TimeUnit.Months => days / 28, _ => days / 365 });
    }

    private int FirstFor(int animal) => (_number.Condition, _window) switch
    {
        (TimeSinceCondition since, null) => LastOf(since.Kinds, animal),
        (_, FromAfterLast after) => LastOf(after.Kinds, animal),
        (AgeCondition, null) => Earlier(_last, _herd.BornEarliest[animal]),
        (CountCondition or MeasuredCondition or TestCondition, InTheLast or BeforeDate) => FirstOf(new ConditionParts(_number.Condition).Kinds, animal),
        _ => Math.Min(_firstOfAll, FirstOfHers(animal)),
    };

    /// <summary>The latest of some kinds on the first judging day: on every day that an answer speaks of, hers is that one or a later one.</summary>
    private int LastOf(IEnumerable<Kind> kinds, int animal)
    {
        var last = Day.Start;
        foreach (var kind in kinds)
        {
            var run = _herd.Runs[kind.Id];
            var place = Runs.LastAtMost(run, animal, _judged);
            last = Math.Max(last, place < run.Starts[animal] ? Day.Start : run.Days[place]);
        }

        return Earlier(Math.Min(_judged, _last), last);
    }

    /// <summary>The first entry of some kinds, or day from which they are kept, or row that could not be read and may be of them.</summary>
    private int FirstOf(IEnumerable<Kind> kinds, int animal)
    {
        var first = Math.Min(_judged, _herd.Coverage.KnownDay);
        foreach (var kind in kinds)
        {
            var run = _herd.Runs[kind.Id];
            first = run.Starts[animal] < run.Starts[animal + 1] ? Math.Min(first, run.Days[run.Starts[animal]]) : first;

            // Kept since before they need be, they are kept however far back one looks.
            var kept = Math.Max(_herd.Coverage.Since[kind.Id], _herd.Coverage.Joined[animal]);
            first = kept > _herd.Coverage.NeededFrom[kind.Id][animal] ? Earlier(first, kept) : first;
        }

        foreach (var gap in _herd.Coverage.Gaps)
        {
            first = gap.Animal < 0 || gap.Animal == animal ? Earlier(first, gap.From) : first;
        }

        foreach (var hole in _herd.Coverage.Holes)
        {
            first = hole.Animal < 0 || hole.Animal == animal ? Earlier(first, hole.From) : first;
        }

        return first;
    }

    /// <summary>The first day of which anything is known of her.</summary>
    private int FirstOfHers(int animal)
    {
        var first = Earlier(Earlier(_last, _herd.BornEarliest[animal]), _herd.Coverage.Joined[animal]);
        foreach (var run in _herd.Runs)
        {
            first = run.Starts[animal] < run.Starts[animal + 1] ? Earlier(first, run.Days[run.Starts[animal]]) : first;
        }

        return first;
    }

    /// <summary>The first day of which anything is known of all together; of a mob, of any animal.</summary>
    private int FirstOfAll(JudgingDays days)
    {
        var first = Math.Min(days.SpanFirst, _herd.Coverage.KnownDay);
        foreach (var day in _herd.Coverage.Since.Concat(_herd.Coverage.Gaps.Select(gap => gap.From)).Concat(_herd.Coverage.Holes.Select(hole => hole.From)).Concat(_herd.MobRuns.OfType<MobRun>().SelectMany(run => run.Days)).Concat(_herd.Mobs.From))
        {
            first = Earlier(first, day);
        }

        return _number.Condition.LooksAtOthers
            ? Enumerable.Range(0, _herd.Count).Select(FirstOfHers).Append(first).Min()
            : first;
    }

    private static int DateOf(Window window, Programme programme)
    {
        var named = window switch { BeforeDate before => before.Date, DaysAfter after => after.Day.Date, _ => null };
        return ((named?.Name is { } name ? programme.Date(name) : null) ?? named?.Value) is { } date ? Day.Number(date) : Day.Start;
    }

    /// <summary>The earlier of two days, the second of which may stand for none.</summary>
    private static int Earlier(int first, int day) => day is > Day.Start and < Day.End ? Math.Min(first, day) : first;
}
