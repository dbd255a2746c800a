namespace Byrelaw.Records.Building;

/// <summary>
/// Makes out of births, joining and leaving who is in the herd when, and from when to when the farm
/// can have kept records of each animal.
/// </summary>
internal sealed class MembershipBuilder
{
    private readonly AnimalRow[] _animals;
    private readonly SortedRun<int> _rows;
    private readonly HerdEffect[] _effects;
    private readonly bool[] _forGood;
    private readonly GapIndex _gaps;
    private readonly GapIndex _joinGaps;
    private readonly GapIndex _leaveGaps;
    private readonly Stretches _stretches;
    private readonly int[] _joinedOnRecord;
    private readonly int[] _leftOnRecord;

    /// <summary>Takes what is on record.</summary>
    /// <param name="animals">Births.</param>
    /// <param name="rows">Rows of joining and leaving kinds; the result is the kind's id.</param>
    /// <param name="effects">By kind id.</param>
    /// <param name="forGood">By kind id: whether nobody comes back from it.</param>
    /// <param name="gaps">All gaps.</param>
    public MembershipBuilder(AnimalRow[] animals, SortedRun<int> rows, HerdEffect[] effects, bool[] forGood, IReadOnlyCollection<Gap> gaps)
    {
        _forGood = forGood;
        _animals = animals;
        _rows = rows;
        _effects = effects;
        _joinGaps = Concerning(gaps, effect => effect == HerdEffect.Joins);
        _leaveGaps = Concerning(gaps, effect => effect == HerdEffect.Leaves);
        _gaps = Concerning(gaps, effect => effect != HerdEffect.None);
        _stretches = new Stretches(animals.Length);
        Joined = new int[animals.Length];
        Left = new int[animals.Length];
        _joinedOnRecord = new int[animals.Length];
        _leftOnRecord = new int[animals.Length];
    }

    /// <summary>As <see cref="Coverage.Joined"/>.</summary>
    public int[] Joined { get; }

    /// <summary>As <see cref="Coverage.Left"/>.</summary>
    public int[] Left { get; }

    /// <summary>Goes through the herd.</summary>
    public Membership Build()
    {
        for (var animal = 0; animal < _animals.Length; animal++)
        {
            AddStretches(animal);
            SetKept(animal);
            _stretches.Next();
        }

        return new Membership
        {
            Starts = _stretches.Starts,
            From = _stretches.From,
            States = Array.ConvertAll(_stretches.States, state => (Presence)state),
            Lines = _stretches.Lines,
            Kinds = _stretches.Kinds,
            JoinedOnRecord = _joinedOnRecord,
            LeftOnRecord = _leftOnRecord,
        };
    }

    private GapIndex Concerning(IReadOnlyCollection<Gap> gaps, Func<HerdEffect, bool> concerned)
    {
        // Where no kind has the effect, a row of an unreadable kind cannot have had it either.
        var isPossible = _effects.Any(concerned);
        return new GapIndex(isPossible ? gaps : [], kind => concerned(_effects[kind]));
    }

    private void AddStretches(int animal)
    {
        var (born, surelyBorn) = (_animals[animal].BornFirst, _animals[animal].BornLast);
        var anyDay = _gaps.OnAnyDay(animal);
        var first = anyDay is null ? FirstDay(animal) : Day.End;
        var state = anyDay is null ? StateBefore(animal) : Presence.NotKnown;
        if (state == Presence.Out || born <= Day.Start)
        {
            Add(Day.Start, state, anyDay?.Line ?? 0, anyDay?.Kind ?? -1);
        }
        else
        {
            Add(Day.Start, Presence.Out, 0, -1);
            Add(born, born == surelyBorn ? state : Presence.NotKnown, anyDay?.Line ?? 0, anyDay?.Kind ?? -1);
            if (surelyBorn < first)
            {
                Add(surelyBorn, state, anyDay?.Line ?? 0, anyDay?.Kind ?? -1);
            }
        }

        if (anyDay is null)
        {
            AddChanges(animal, state);
        }
    }

    private void AddChanges(int animal, Presence state)
    {
        var at = _animals[animal].BornFirst;
        int? goneForGood = null;
        var isBack = false;
        var i = _rows.Starts[animal];
        var end = _rows.Starts[animal + 1];
        while (true)
        {
            var day = i < end ? _rows.Days[i] : Day.End;
            if (_gaps.First(animal, at, day) is { } gap)
            {
                state = Presence.NotKnown;
                Add(gap.From, state, gap.Line, gap.Kind);
            }

            if (i == end)
            {
                return;
            }

            var (line, kind) = (_rows.Lines[i], _rows.Results[i]);
            var (joins, leaves, forGood) = DayOf(ref i, end);
            (goneForGood, isBack) = forGood ? (day, false) : (goneForGood, isBack || joins || MayHaveJoined(animal, goneForGood, day));
            if (_gaps.First(animal, day, day + 1) is not null)
            {
                state = Presence.NotKnown;
                Add(day, state, line, kind);
            }
            else if (forGood)
            {
                // Whoever died or was slaughtered on the day she came is out all the same.
                state = Presence.Out;
                Add(day, state, line, kind);
            }
            else
            {
                // In and out again, or out and in again, nobody can tell up to the next row about it; and back from the dead, never.
                state = (joins && leaves) || (goneForGood is not null && isBack) ? Presence.NotKnown : joins ? Presence.In : Presence.Out;
                Add(day, state, line, kind);
            }

            at = day + 1;
        }
    }

    /// <summary>Whether a row that could not be read may have brought her back after she was gone for good.</summary>
    private bool MayHaveJoined(int animal, int? goneForGood, int day) => goneForGood is { } gone && _joinGaps.First(animal, gone + 1, day + 1) is not null;

    /// <summary>
    /// From the latest day on which she joined or may have joined. To the first day after she surely joined
    /// last on which she left or may have left: a joining that only may have been does not bring her back.
    /// </summary>
    private void SetKept(int animal)
    {
        var surelyJoined = Day.Start;
        for (var i = _rows.Starts[animal]; i < _rows.Starts[animal + 1]; i++)
        {
            if (_effects[_rows.Results[i]] == HerdEffect.Joins)
            {
                surelyJoined = _rows.Days[i];
            }
        }

        Joined[animal] = _joinGaps.OnAnyDay(animal) is null ? Math.Max(surelyJoined, _joinGaps.LastDay(animal)) : Day.End;
        var left = Day.End;
        for (var i = _rows.Starts[animal]; i < _rows.Starts[animal + 1]; i++)
        {
            var day = _rows.Days[i];
            if (_effects[_rows.Results[i]] == HerdEffect.Leaves && day >= surelyJoined && day < left
                && !(day == surelyJoined && IsInAfter(day)))
            {
                left = day;
            }
        }

        (_joinedOnRecord[animal], _leftOnRecord[animal]) = (surelyJoined, left);
        left = Math.Min(left, _leaveGaps.First(animal, Math.Max(surelyJoined, _animals[animal].BornFirst), Day.End)?.From ?? Day.End);
        Left[animal] = _leaveGaps.OnAnyDay(animal) is null ? left : surelyJoined;
    }

    /// <summary>Whether the stretches of the current animal say that she is in on the day after.</summary>
    private bool IsInAfter(int day) => _stretches.CurrentState(day + 1) == (int)Presence.In;

    /// <summary>The first day on which she joins, leaves, or may have done so.</summary>
    private int FirstDay(int animal)
    {
        var i = _rows.Starts[animal];
        var day = i < _rows.Starts[animal + 1] ? _rows.Days[i] : Day.End;
        return _gaps.First(animal, _animals[animal].BornFirst, day)?.From ?? day;
    }

    /// <summary>
    /// What she is before that first day: born here, unless the first thing is that she joins. Rows that could not
    /// be read may come before the first that could, each of which may have been the first thing, or nothing.
    /// </summary>
    private Presence StateBefore(int animal)
    {
        var i = _rows.Starts[animal];
        var end = _rows.Starts[animal + 1];
        var day = i < end ? _rows.Days[i] : Day.End;
        var (joins, leaves, _) = i < end ? DayOf(ref i, end) : (false, true, false);
        joins |= _joinGaps.First(animal, _animals[animal].BornFirst, day + 1) is not null;
        leaves |= _leaveGaps.First(animal, _animals[animal].BornFirst, day + 1) is not null;
        return !joins ? Presence.In : leaves ? Presence.NotKnown : Presence.Out;
    }

    /// <summary>What the rows of one day say; goes on to the next day.</summary>
    private (bool Joins, bool Leaves, bool ForGood) DayOf(ref int i, int end)
    {
        var day = _rows.Days[i];
        var (joins, leaves, forGood) = (false, false, false);
        for (; i < end && _rows.Days[i] == day; i++)
        {
            joins |= _effects[_rows.Results[i]] == HerdEffect.Joins;
            leaves |= _effects[_rows.Results[i]] == HerdEffect.Leaves;
            forGood |= _forGood[_rows.Results[i]];
        }

        return (joins, leaves, forGood);
    }

    private void Add(int from, Presence state, int line, int kind) => _stretches.Add(from, (int)state, line, kind);
}
