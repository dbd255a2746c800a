using Byrelaw.Judging.Days;
using Byrelaw.Judging.Explaining;
using Byrelaw.Judging.Truths;
using Byrelaw.Judging.Verdicts;
using Byrelaw.Language.Rulebooks.Conditions;
using Byrelaw.Records.Herds;

namespace Byrelaw.Judging.Criteria;

/// <summary>
/// <c>running with bull</c>, <c>not running with bull in the last 35 days</c>: whether she was in the spell on any
/// day of the window. On the days of its starting and ending events she was.
/// </summary>
internal sealed class SpellCriterion(HerdDays days, SpellCondition condition, WindowSet windows)
    : LeafCriterion(days, condition, restsOnCoverage: true)
{
    private readonly int _from = condition.Spell.From.Id;
    private readonly int _until = condition.Spell.Until.Id;

    protected override Truth Decide(int animal, int day, bool strict, ref int until, ref bool pending, Notes? notes)
    {
        Bounds bounds = new(day, day, day);
        if (condition.Windows.IsEmpty)
        {
            until = Math.Min(until, Math.Min(
                Days.NextEdge(animal, _from, day, strict), Days.NextEdge(animal, _until, day, strict)) - 1);
        }
        else
        {
            if (!windows.Read(animal, day, strict, out var reading, ref until, notes))
            {
                notes?.Nothing();
                return Truth.Unknown;
            }

            windows.Limit(animal, day, _from, strict, reading, ref until);
            windows.Limit(animal, day, _until, strict, reading, ref until);
            bounds = WindowSet.Together(reading);
        }

        // More days can only find more: the longest window decides for False, the shortest for True.
        var isIn = In(animal, bounds.Low, bounds.LowLatest, bounds.High, strict, notes);
        var truth = condition.Not ? (Truth)(Truth.True - isIn) : isIn;
        if (truth == Truth.False)
        {
            notes?.Remedy(condition.Not && !condition.Windows.IsEmpty
                ? new Remedy(RemedyKind.Time, [])
                : new Remedy(RemedyKind.NewEvent, [condition.Not ? condition.Spell.Until.Name : condition.Spell.From.Name]));
        }

        return truth;
    }

    /// <summary>Walks through her starts and ends, day by day of change, and looks at the days of the window.</summary>
    private Truth In(int animal, int low, int lowLatest, int high, bool strict, Notes? notes)
    {
        var starts = Days.Herd.Runs[_from];
        var ends = Days.Herd.Runs[_until];
        int s = starts.Starts[animal], lastStart = starts.Starts[animal + 1];
        int e = ends.Starts[animal], lastEnd = ends.Starts[animal + 1];
        var isIn = false;
        var since = Day.Start;
        var surelyIn = int.MinValue;
        var maybeIn = int.MinValue;
        while (true)
        {
            var next = Math.Min(s < lastStart ? starts.Days[s] : int.MaxValue, e < lastEnd ? ends.Days[e] : int.MaxValue);
            var to = Math.Min(high, next == int.MaxValue ? high : next - 1);

            // In, until an end that is not on record; out, until a start that is not.
            var firstDoubt = Days.FirstUncovered(animal, isIn ? _until : _from, since, to, strict);
            var quiet = since == Day.Start ? since : since + 1;
            if (isIn && Math.Min(to, firstDoubt - 1) >= Math.Max(low, quiet))
            {
                surelyIn = Math.Max(surelyIn, Math.Min(to, firstDoubt - 1));
            }

            if (firstDoubt <= to && to >= Math.Max(low, quiet))
            {
                maybeIn = Math.Max(maybeIn, to);
                notes?.NotKept(isIn ? _until : _from, Math.Max(firstDoubt, low), to);
            }

            if (next > high)
            {
                break;
            }

            var isStart = s < lastStart && starts.Days[s] == next;
            var isEnd = e < lastEnd && ends.Days[e] == next;
            if (next >= low)
            {
                surelyIn = Math.Max(surelyIn, next);
            }

            if (isStart)
            {
                notes?.Entry(_from, s);
                s++;
            }

            if (isEnd)
            {
                notes?.Entry(_until, e);
                e++;
            }

            isIn = isStart && isEnd ? isIn : isStart;
            since = next;
        }

        notes?.Spell(surelyIn >= low ? surelyIn : null);
        if (surelyIn >= lowLatest)
        {
            return Truth.True;
        }

        return surelyIn >= low || maybeIn >= low ? Truth.Unknown : Truth.False;
    }
}
