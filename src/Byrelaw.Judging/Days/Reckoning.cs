namespace Byrelaw.Judging.Days;

/// <summary>
/// Adds a length of time to day numbers, and answers the two questions that windows and limits
/// ask backwards. Months are added to the earlier date, so the way back is a search, not a
/// subtraction. Remembers the last question: a whole herd is asked about the same day in turn.
/// </summary>
internal sealed class Reckoning
{
    private static readonly int LastOfCalendar = Day.Number(TimeLength.Latest);

    private readonly TimeLength _length;
    private readonly int _days;
    private int _askedFirst = int.MinValue, _first;
    private int _askedLast = int.MinValue, _last;

    public Reckoning(TimeLength length)
    {
        _length = length;
        _days = length.Unit switch
        {
            TimeUnit.Days => Math.Min(length.Count, Day.End),
            TimeUnit.Weeks => (int)Math.Min(length.Count * 7L, Day.End),
            _ => -1,
        };
    }

    /// <summary>The day this long after another.</summary>
    public int After(int day)
    {
        if (day <= Day.Start || day >= LastOfCalendar)
        {
            return day;
        }

        return _days >= 0 ? Math.Min(day + _days, Day.End) : Day.Number(_length.After(Day.Date(day)));
    }

    /// <summary>The first day from which this long reaches <paramref name="day"/> or beyond.</summary>
    public int FirstReaching(int day)
    {
        if (_days >= 0)
        {
            return day - _days;
        }

        if (IsBeyondAllRecords)
        {
            return Day.Start + 1;
        }

        if (day != _askedFirst)
        {
            var first = Before(day);
            while (After(first) >= day)
            {
                first--;
            }

            while (After(first) < day)
            {
                first++;
            }

            (_askedFirst, _first) = (day, first);
        }

        return _first;
    }

    /// <summary>The last day from which this long does not go beyond <paramref name="day"/>.</summary>
    public int LastWithin(int day)
    {
        if (_days >= 0)
        {
            return day - _days;
        }

        if (IsBeyondAllRecords)
        {
            return Day.Start + 1;
        }

        if (day != _askedLast)
        {
            var last = Before(day);
            while (After(last) <= day)
            {
                last++;
            }

            while (After(last) > day)
            {
                last--;
            }

            (_askedLast, _last) = (day, last);
        }

        return _last;
    }

    /// <summary>Five hundred years and more: no record is that old, and the search would leave the calendar.</summary>
    private bool IsBeyondAllRecords => _length.Count >= (_length.Unit == TimeUnit.Years ? 500 : 6000);

    /// <summary>A day within a few of the one sought.</summary>
    private int Before(int day)
    {
        var months = _length.Unit == TimeUnit.Years ? _length.Count * 12L : _length.Count;
        var estimate = day - (months * 30.436875);
        return (int)estimate;
    }
}
