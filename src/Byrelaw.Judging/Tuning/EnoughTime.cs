using Byrelaw.Judging.Days;
using Byrelaw.Judging.Lists;
using Byrelaw.Language.Rulebooks;
using Byrelaw.Language.Rulebooks.Conditions;
using Byrelaw.Language.Tuning;
using Byrelaw.Records.Herds;

namespace Byrelaw.Judging.Tuning;

/// <summary>
/// How long a length of time can be and still tell one animal from another: from the last day of the span back to the
/// first day of which anything is known. A longer one reaches beyond all records, and nothing changes any more.
/// </summary>
internal sealed class EnoughTime
{
    private readonly Herd _herd;
    private readonly RuleNumber _number;
    private readonly int _last;
    private readonly int _firstOfAll;
    private readonly bool _isOfTheMob;

    public EnoughTime(Herd herd, Programme programme, RuleNumber number, JudgingDays days)
    {
        (_herd, _number) = (herd, number);
        _isOfTheMob = number.Condition is MobMeasuredCondition or MobCountCondition;
        _last = Math.Max(days.SpanLast, ConditionWindows.Of(number.Condition).Select(window => DateOf(window, programme)).Append(Day.Start).Max());
        var first = Math.Min(days.SpanFirst, herd.Coverage.KnownDay);
        foreach (var day in herd.Coverage.Since.Concat(herd.Coverage.Gaps.SelectMany(gap => (int[])[gap.From, gap.To])).Concat(MobDays(herd)))
        {
            first = Earlier(first, day);
        }

        _firstOfAll = first;
        if (_isOfTheMob)
        {
            for (var animal = 0; animal < herd.Count; animal++)
            {
                _firstOfAll = Math.Min(_firstOfAll, FirstOf(animal));
            }
        }
    }

    /// <summary>For one animal, in the number's own unit.</summary>
    public int For(int animal)
    {
        // Two days more, so that "more than" and the day after an event are within.
        var days = _last - Math.Min(_firstOfAll, FirstOf(animal)) + 2;
        return 1 + (_number.Number.TimeUnit switch { TimeUnit.Days => days, TimeUnit.Weeks => days / 7, TimeUnit.Months => days / 28, _ => days / 365 });
    }

    private int FirstOf(int animal)
    {
        var first = Earlier(Earlier(_last, _herd.BornEarliest[animal]), _herd.Coverage.Joined[animal]);
        foreach (var run in _herd.Runs)
        {
            if (run.Starts[animal] < run.Starts[animal + 1])
            {
                first = Earlier(first, run.Days[run.Starts[animal]]);
            }
        }

        return first;
    }

    private static IEnumerable<int> MobDays(Herd herd) => herd.MobRuns.OfType<MobRun>().SelectMany(run => run.Days).Concat(herd.Mobs.From);

    private static int DateOf(Window window, Programme programme) =>
        window is BeforeDate before && ((before.Date.Name is { } name ? programme.Date(name) : null) ?? before.Date.Value) is { } date ? Day.Number(date) : Day.Start;

    /// <summary>The earlier of two days, the second of which may stand for none.</summary>
    private static int Earlier(int first, int day) => day is > Day.Start and < Day.End ? Math.Min(first, day) : first;
}
