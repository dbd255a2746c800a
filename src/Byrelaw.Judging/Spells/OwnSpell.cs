namespace Byrelaw.Judging.Spells;

/// <summary>Whether an animal is in a spell by her own rows. On the days of its starting and ending events she is.</summary>
/// <param name="days">The herd as each animal's own rows begin spells.</param>
/// <param name="spell">Which.</param>
/// <param name="endings">What ends it without a row.</param>
/// <param name="lost">Starts that are not on record.</param>
internal sealed class OwnSpell(HerdDays days, Spell spell, SpellEnds endings, LostStartDays lost)
{
    private readonly int _from = spell.From.Id;
    private readonly int _until = spell.Until.Id;

    /// <summary>What ends it without a row.</summary>
    public SpellEnds Endings => endings;

    /// <summary>Starts that are not on record.</summary>
    public LostStartDays Lost => lost;

    /// <summary>Walks through her starts and ends, day by day of change, for the last day on which she surely was in it, and the last on
    /// which she may have been; int.MinValue for none.</summary>
    public (int Sure, int Maybe) Latest(int animal, int low, int high, bool strict, Notes? notes)
    {
        var starts = days.Herd.Runs[_from];
        var ends = days.Herd.Runs[_until];
        int s = starts.Starts[animal], lastStart = starts.Starts[animal + 1];
        int e = ends.Starts[animal], lastEnd = ends.Starts[animal + 1];
        var walk = new Walk { State = SpellState.Out, Sure = int.MinValue, Maybe = int.MinValue };
        var from = Day.Start;
        var doubts = notes is null ? null : new SpellDoubts(days, animal, _from, _until, notes);
        while (true)
        {
            var row = Math.Min(s < lastStart ? starts.Days[s] : int.MaxValue, e < lastEnd ? ends.Days[e] : int.MaxValue);
            var end = endings.Next(animal, from);
            var next = Math.Min(row, end);

            // A day that ends it without a row is a day like others, up to its evening.
            var quiet = end < row ? end : next == int.MaxValue ? high : next - 1;
            Quiet(animal, from, Math.Min(high, quiet), low, strict, ref walk, doubts);
            if (next > high)
            {
                doubts?.Write();
                return (walk.Sure, walk.Maybe);
            }

            if (end < row)
            {
                walk.State = SpellState.Out | (!endings.EndsAll(end) && IsHidden(animal, _from, end, strict) ? SpellState.In : 0);
                doubts?.Ended(walk.State == SpellState.Out ? null : end);
                from = end + 1;
                continue;
            }

            walk.Sure = next >= low ? Math.Max(walk.Sure, next) : walk.Sure;
            var isStart = s < lastStart && starts.Days[s] == next;
            var isEnd = e < lastEnd && ends.Days[e] == next;
            if (isStart)
            {
                notes?.Row(_from, next, starts.Lines[s]);
                s++;
            }

            if (isEnd)
            {
                notes?.Row(_until, next, ends.Lines[e]);
                e++;
            }

            // After a day with both, recorded or hidden, she is what she was before it.
            var was = end == next ? SpellState.Out : walk.State;
            var mayBeBoth = (isStart && isEnd) || IsHidden(animal, isStart ? _until : _from, next, strict);
            var after = isStart && isEnd ? 0 : isStart ? SpellState.In : SpellState.Out;
            walk.State = end == next && endings.EndsAll(next) ? SpellState.Out : mayBeBoth ? after | was : after;
            if (end == next)
            {
                doubts?.Ended(null);
            }

            doubts?.Event(next, isStart, isEnd);
            if (walk.State is SpellState.In or SpellState.Out)
            {
                doubts?.Known();
            }

            from = next + 1;
        }
    }

    private bool IsHidden(int animal, int kind, int day, bool strict) => !days.Covers(animal, kind, day, day) || (strict && days.IsOpen(animal, kind, day));

    /// <summary>Days without a recorded start or end: in, until an end that is not on record (on whose day she still is);
    /// out, until a start that is not.</summary>
    private void Quiet(int animal, int from, int to, int low, bool strict, ref Walk walk, SpellDoubts? doubts)
    {
        if (to < from)
        {
            return;
        }

        doubts?.Quiet(from, to);
        var start = walk.State.HasFlag(SpellState.Out) ? days.FirstUncovered(animal, _from, from, to, strict) : int.MaxValue;
        var end = walk.State.HasFlag(SpellState.In) ? days.FirstUncovered(animal, _until, from, to, strict) : int.MaxValue;
        var firstMaybe = walk.State switch
        {
            SpellState.Out => start,
            SpellState.In => end == int.MaxValue ? end : end + 1,
            _ => from,
        };
        if (walk.State == SpellState.In && Math.Min(to, firstMaybe - 1) >= Math.Max(low, from))
        {
            walk.Sure = Math.Max(walk.Sure, Math.Min(to, firstMaybe - 1));
        }

        if (firstMaybe <= to && to >= Math.Max(low, from))
        {
            walk.Maybe = Math.Max(walk.Maybe, to);
            doubts?.Matters();
        }

        if (lost.Last(animal, Math.Max(low, from), to) is var mayHaveRun and > int.MinValue)
        {
            walk.Maybe = Math.Max(walk.Maybe, mayHaveRun);
            doubts?.LostStart(lost.First(animal, mayHaveRun), mayHaveRun);
        }

        walk.State |= start <= to ? SpellState.In : 0;
        walk.State |= end <= to ? SpellState.Out : 0;
    }

    private struct Walk
    {
        public SpellState State;
        public int Sure;
        public int Maybe;
    }

    /// <summary>What she may be; both where it is not known.</summary>
    [Flags]
    private enum SpellState
    {
        Out = 1,
        In = 2,
    }
}
