namespace Byrelaw.Records.Events;

/// <summary>The latest few days on which rows were entered, each once, to tell a day far ahead of all others from the end of the records.</summary>
internal sealed class LatestDays
{
    private const int Kept = 8;
    private const int LongestPause = 366;
    private readonly int[] _days = new int[Kept];
    private int _count;

    /// <summary>Notes a day.</summary>
    public void Add(int day)
    {
        if (day <= Day.Start || (_count > 0 && day == _days[0]) || (_count == Kept && day <= _days[^1]))
        {
            return;
        }

        var place = 0;
        while (place < _count && _days[place] > day)
        {
            place++;
        }

        if (place < _count && _days[place] == day)
        {
            return;
        }

        _count = Math.Min(_count + 1, Kept);
        _days.AsSpan(place, _count - place - 1).CopyTo(_days.AsSpan(place + 1));
        _days[place] = day;
    }

    /// <summary>Notes the days of another.</summary>
    public void Add(LatestDays other)
    {
        foreach (var day in other._days.AsSpan(0, other._count))
        {
            Add(day);
        }
    }

    /// <summary>The latest; <see cref="Day.Start"/> for none.</summary>
    public int Latest => _count == 0 ? Day.Start : _days[0];

    /// <summary>
    /// The latest that lies not more than a year after the day before it: a slip of the pen in the year must not say how far
    /// the records reach. Of several such slips each is passed over, as long as two other days are left: of two days alone
    /// either may be the slip.
    /// </summary>
    public int LatestNearOthers
    {
        get
        {
            var place = 0;
            while (place + 1 < _count && _days[place] - _days[place + 1] > LongestPause && place + 2 < _count)
            {
                place++;
            }

            return _count == 0 ? Day.Start : _days[place];
        }
    }
}
