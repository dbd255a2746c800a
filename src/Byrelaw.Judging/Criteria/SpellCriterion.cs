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

    protected override Kleene Decide(int animal, int day, ref int until, Notes? notes)
    {
        var bounds = Bounds.UpTo(day).From(day);
        var isStrictlyKnown = true;
        if (condition.Windows.IsEmpty)
        {
            until = Math.Min(until, Math.Min(Days.NextEdge(animal, _from, day), new DayAfterEdges(Days, animal, _until).Next(day)) - 1);
            until = Math.Min(until, new AfterKnownEdges(Days.KnownDay).Next(day) - 1);
        }
        else
        {
            var reading = windows.Read(animal, day, ref until, notes);
            if (!reading.IsKnown)
            {
                notes?.Nothing();
                return Kleene.Unknown;
            }

            windows.Limit(animal, day, _from, reading, ref until);
            windows.Limit(animal, day, _until, reading, ref until);
            windows.LimitBy(new DayAfterEdges(Days, animal, _until), day, reading, ref until);
            windows.LimitBy(new AfterKnownEdges(Days.KnownDay), day, reading, ref until);
            bounds = reading.Together;
            if (bounds.Latest > bounds.High || bounds.StrictLatest > bounds.High)
            {
                // The latest first day that the window may have is not reached yet: until it is, every day may tell.
                until = day;
            }

            isStrictlyKnown = reading.IsStrictlyKnown;
        }

        var isIn = In(animal, bounds, strict: false, notes);
        var isInStrictly = day <= Days.KnownDay ? isIn : isStrictlyKnown ? In(animal, bounds, strict: true, null) : Truth.Unknown;
        if (notes is not null)
        {
            notes.Remedy(condition.Not && !condition.Windows.IsEmpty
                ? new Remedy(RemedyKind.Time, [])
                : new Remedy(RemedyKind.NewEvent, [condition.Not ? condition.Spell.Until.Name : condition.Spell.From.Name]));
        }

        var answer = Kleene.Of(isIn, isInStrictly);
        return condition.Not ? !answer : answer;
    }

    /// <summary>Walks through her starts and ends, day by day of change, and looks at the days of the window.</summary>
    private Truth In(int animal, in Bounds bounds, bool strict, Notes? notes)
    {
        var (low, high) = (bounds.Low, bounds.High);
        var starts = Days.Herd.Runs[_from];
        var ends = Days.Herd.Runs[_until];
        int s = starts.Starts[animal], lastStart = starts.Starts[animal + 1];
        int e = ends.Starts[animal], lastEnd = ends.Starts[animal + 1];
        var state = SpellState.Out;
        var from = Day.Start;
        var surelyIn = int.MinValue;
        var maybeIn = int.MinValue;
        var doubts = notes is null ? null : new SpellDoubts(Days, animal, _from, _until, notes);
        while (true)
        {
            var next = Math.Min(s < lastStart ? starts.Days[s] : int.MaxValue, e < lastEnd ? ends.Days[e] : int.MaxValue);
            var to = Math.Min(high, next == int.MaxValue ? high : next - 1);
            Quiet(animal, from, to, low, strict, ref state, ref surelyIn, ref maybeIn, doubts);
            if (next > high)
            {
                break;
            }

            if (next >= low)
            {
                surelyIn = Math.Max(surelyIn, next);
            }

            var isStart = s < lastStart && starts.Days[s] == next;
            var isEnd = e < lastEnd && ends.Days[e] == next;
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

            // After a day with both, recorded or hidden, she is what she was before it.
            var mayBeBoth = isStart && isEnd || !Days.Covers(animal, isStart ? _until : _from, next, next)
                || (strict && Days.IsOpen(animal, isStart ? _until : _from, next));
            var after = isStart && isEnd ? 0 : isStart ? SpellState.In : SpellState.Out;
            state = mayBeBoth ? after | state : after;
            doubts?.Event(next, isStart, isEnd);
            if (state is SpellState.In or SpellState.Out)
            {
                doubts?.Known();
            }

            from = next + 1;
        }

        doubts?.Write();
        notes?.Spell(surelyIn >= low ? surelyIn : null);
        if (surelyIn >= (strict ? bounds.StrictLatest : bounds.Latest))
        {
            return Truth.True;
        }

        return surelyIn >= low || maybeIn >= low ? Truth.Unknown : Truth.False;
    }

    /// <summary>Days without a recorded start or end: in, until an end that is not on record (on whose day she still is);
    /// out, until a start that is not.</summary>
    private void Quiet(
        int animal, int from, int to, int low, bool strict, ref SpellState state, ref int surelyIn, ref int maybeIn, SpellDoubts? doubts)
    {
        if (to < from)
        {
            return;
        }

        doubts?.Quiet(from, to);
        var start = state.HasFlag(SpellState.Out) ? Days.FirstUncovered(animal, _from, from, to, strict) : int.MaxValue;
        var end = state.HasFlag(SpellState.In) ? Days.FirstUncovered(animal, _until, from, to, strict) : int.MaxValue;
        var firstMaybe = state switch
        {
            SpellState.Out => start,
            SpellState.In => end == int.MaxValue ? end : end + 1,
            _ => from,
        };
        if (state == SpellState.In && Math.Min(to, firstMaybe - 1) >= Math.Max(low, from))
        {
            surelyIn = Math.Max(surelyIn, Math.Min(to, firstMaybe - 1));
        }

        if (firstMaybe <= to && to >= Math.Max(low, from))
        {
            maybeIn = Math.Max(maybeIn, to);
            doubts?.Matters();
        }

        state |= start <= to ? SpellState.In : 0;
        state |= end <= to ? SpellState.Out : 0;
    }

    /// <summary>What she may be; both where it is not known.</summary>
    [Flags]
    private enum SpellState
    {
        Out = 1,
        In = 2,
    }
}
