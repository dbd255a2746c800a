namespace Byrelaw.Judging.Lists;

/// <summary>A timeline in day numbers, in arrays that are used again for the next animal.</summary>
internal sealed class DayTimeline
{
    private int[] _from = new int[16];
    private Kleene[] _value = new Kleene[16];

    public int Count { get; private set; }

    /// <summary>The last day, included.</summary>
    public int Last { get; private set; }

    public Kleene this[int step] => _value[step];

    public int From(int step) => _from[step];

    public int To(int step) => step + 1 < Count ? _from[step + 1] - 1 : Last;

    /// <summary>Asks a criterion for a span of days, each time for as long as its answer stands.</summary>
    public void Trace(Criterion criterion, int animal, int first, int last)
    {
        Count = 0;
        Last = last;
        for (var day = first; day <= last;)
        {
            var until = int.MaxValue;
            var value = criterion.On(animal, day, ref until, null);
            Add(day, value);
            day = Math.Max(until, day) + 1L > last ? last + 1 : Math.Max(until, day) + 1;
        }
    }

    /// <summary>Kleene's "and" over days.</summary>
    public Kleene Over(int first, int last)
    {
        var all = Kleene.True;
        for (var step = 0; step < Count && _from[step] <= last; step++)
        {
            if (To(step) >= first)
            {
                all &= _value[step];
            }
        }

        return all;
    }

    /// <summary>
    /// The first later stretch on all days of which it satisfies: from a later judging day to the last of them, or as many days in a row as are
    /// judged, after them.
    /// </summary>
    /// <param name="days">The judging days.</param>
    /// <param name="mayBeUnknown">Days that are not known satisfy too; else only true ones.</param>
    /// <param name="until">The last day in a row that satisfies.</param>
    /// <returns>The first day of the stretch; int.MaxValue for none.</returns>
    public int LaterStretch(JudgingDays days, bool mayBeUnknown, out int until)
    {
        for (var step = 0; step < Count; step++)
        {
            if (!Satisfies(step, mayBeUnknown))
            {
                continue;
            }

            var start = Math.Max(_from[step], days.First + 1);
            while (step + 1 < Count && Satisfies(step + 1, mayBeUnknown))
            {
                step++;
            }

            until = To(step);
            if (until >= days.EndOfStretch(start))
            {
                return start;
            }
        }

        until = int.MaxValue;
        return int.MaxValue;
    }

    /// <summary>The stretch of true days that holds a day which is true.</summary>
    public (int From, int Until) TrueAround(int day)
    {
        int from = day, until = day;
        for (var step = 0; step < Count; step++)
        {
            if (!Satisfies(step, false))
            {
                continue;
            }

            var start = _from[step];
            while (step + 1 < Count && Satisfies(step + 1, false))
            {
                step++;
            }

            if (start <= day && day <= To(step))
            {
                (from, until) = (start, To(step));
            }
        }

        return (from, until);
    }

    /// <summary>The timeline as others read it: by dates.</summary>
    public Timeline ToTimeline()
    {
        var stretches = ImmutableArray.CreateBuilder<Stretch>(Count);
        for (var step = 0; step < Count; step++)
        {
            var stretch = new Stretch(Day.Date(_from[step]), _value[step].Assumed, _value[step].IsExpected);
            if (stretches.Count == 0 || stretches[^1].Truth != stretch.Truth || stretches[^1].Expected != stretch.Expected)
            {
                stretches.Add(stretch);
            }
        }

        return new Timeline(stretches.ToImmutable(), Day.Date(Last));
    }

    private bool Satisfies(int step, bool mayBeUnknown) => mayBeUnknown ? !_value[step].IsFalse : _value[step].IsTrue;

    private void Add(int day, Kleene value)
    {
        if (Count > 0 && _value[Count - 1] == value)
        {
            return;
        }

        if (Count == _from.Length)
        {
            Array.Resize(ref _from, Count * 2);
            Array.Resize(ref _value, Count * 2);
        }

        _from[Count] = day;
        _value[Count] = value;
        Count++;
    }
}
