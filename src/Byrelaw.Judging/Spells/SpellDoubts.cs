namespace Byrelaw.Judging.Spells;

/// <summary>
/// What would have to be kept for it to be known what she was, taken that nothing happened but what is on record: starts while that
/// says she was out, ends while it says she was in. Collected day by day of change since it was last known.
/// </summary>
internal sealed class SpellDoubts(HerdDays days, int animal, int from, int until, Notes notes)
{
    private readonly (int First, int Last)[] _open = [Nothing, Nothing];
    private readonly (int First, int Last)[] _missing = [Nothing, Nothing];
    private bool _isIn;

    /// <summary>Days without a recorded start or end.</summary>
    public void Quiet(int first, int last)
    {
        if (days.FirstUncovered(animal, _isIn ? until : from, first, last, strict: false) is var uncovered && uncovered <= last)
        {
            Add(_isIn, uncovered, last);
        }
    }

    /// <summary>A day with a recorded start, or end, or both. One that is not on record, of the other sort, may undo it.</summary>
    public void Event(int day, bool isStart, bool isEnd)
    {
        if (isStart != isEnd)
        {
            if (isStart != _isIn && !days.Covers(animal, isStart ? until : from, day, day))
            {
                Add(isStart, day, day);
            }

            _isIn = isStart;
        }
    }

    /// <summary>A day that ended it without a row; on which, though, it may have begun again.</summary>
    public void Ended(int? mayHaveBegun)
    {
        _isIn = false;
        Known();
        if (mayHaveBegun is { } day)
        {
            Add(false, day, day);
        }
    }

    /// <summary>She may have been in it by a start that is not on record.</summary>
    public void LostStart(int first, int last) => _missing[0] = Together(_missing[0], (first, last));

    /// <summary>It is known again what she is.</summary>
    public void Known() => (_open[0], _open[1]) = (Nothing, Nothing);

    /// <summary>It matters what she was.</summary>
    public void Matters()
    {
        for (var i = 0; i < 2; i++)
        {
            _missing[i] = Together(_missing[i], _open[i]);
        }
    }

    /// <summary>Writes down what mattered.</summary>
    public void Write()
    {
        for (var i = 0; i < 2; i++)
        {
            if (_missing[i] != Nothing)
            {
                notes.NotKept(i == 0 ? from : until, _missing[i].First, _missing[i].Last);
            }
        }
    }

    private void Add(bool isOfEnds, int first, int last)
    {
        ref var open = ref _open[isOfEnds ? 1 : 0];
        open = Together(open, (first, last));
    }

    private static (int First, int Last) Together((int First, int Last) one, (int First, int Last) other) =>
        (Math.Min(one.First, other.First), Math.Max(one.Last, other.Last));

    private static readonly (int First, int Last) Nothing = (int.MaxValue, int.MinValue);
}
