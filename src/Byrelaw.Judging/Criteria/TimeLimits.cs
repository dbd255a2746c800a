namespace Byrelaw.Judging.Criteria;

/// <summary>
/// A demand on the time since a day e, on a day d: <c>at least N</c> holds from e + N, <c>at most N</c> until
/// e + N, <c>less than</c> before it, <c>more than</c> after it.
/// </summary>
internal sealed class TimeLimits(TimeTest test)
{
    private readonly Reckoning _low = new(test.Low);
    private readonly Reckoning _high = new(test.High);

    /// <summary>On some days no e at all is accepted: no day of November is exactly 6 months before 31 May.</summary>
    public bool MayAcceptNone { get; } =
        test.Comparison is Comparison.Exactly or Comparison.Between && (IsCalendar(test.Low) || IsCalendar(test.High));

    /// <summary>The first and last e that the demand accepts on a day.</summary>
    public (int First, int Last) Accepted(int day) => test.Comparison switch
    {
        Comparison.AtLeast => (int.MinValue, _low.LastWithin(day)),
        Comparison.MoreThan => (int.MinValue, _low.LastWithin(day - 1)),
        Comparison.AtMost => (_low.FirstReaching(day), int.MaxValue),
        Comparison.LessThan => (_low.FirstReaching(day + 1), int.MaxValue),
        Comparison.Exactly => (_low.FirstReaching(day), _low.LastWithin(day)),
        _ => (_high.FirstReaching(day), _low.LastWithin(day)),
    };

    /// <summary>The first day after <paramref name="day"/> on which the answer for e may turn; int.MaxValue for none.</summary>
    public int NextTurn(int e, int day)
    {
        var turn = int.MaxValue;
        Consider(_low.After(e), day, ref turn);
        Consider(_high.After(e), day, ref turn);
        return turn;
    }

    /// <summary>The first day on which the demand accepts e, taken that it grows into it.</summary>
    public int FirstAccepting(int e)
    {
        var after = _low.After(e);
        return test.Comparison == Comparison.MoreThan ? Math.Min(after + 1, Day.End) : after;
    }

    private static bool IsCalendar(TimeLength length) => length.Unit is TimeUnit.Months or TimeUnit.Years;

    private static void Consider(int limit, int day, ref int turn)
    {
        if (limit > day)
        {
            turn = Math.Min(turn, limit);
        }
        else if (limit + 1 > day)
        {
            turn = Math.Min(turn, limit + 1);
        }
    }
}
