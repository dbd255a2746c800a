namespace Byrelaw.Judging.Spells;

/// <summary>
/// How many bulls may run in a mob after a day, by what its rows say. Two that put a bull in may be of two bulls, or one written twice; one that takes a bull out takes one,
/// the herd's takes all.
/// </summary>
internal static class BullsAfterADay
{
    /// <summary>
    /// How many, at least and at most. After a day with a start and an end, recorded or hidden, it is as before it. Each row of a day that cannot be read may put another bull in beside
    /// those who run; where only a promise is missing, one is enough.
    /// </summary>
    /// <param name="least">How many surely ran before it.</param>
    /// <param name="most">How many may have.</param>
    /// <param name="rows">What is on record of the day.</param>
    /// <param name="mayStart">Whether one may have been put in, unrecorded.</param>
    /// <param name="mayEnd">Whether one may have been taken out, unrecorded.</param>
    /// <param name="unread">How many rows of the day cannot be read and may be such a start.</param>
    public static (int Least, int Most) Of(int least, int most, in CompanyRows rows, bool mayStart, bool mayEnd, int unread) => (rows.Starts, rows.End) switch
    {
        ( > 0, true) => (least, most + rows.Starts - 1 + unread),
        ( > 0, false) => (mayEnd ? least : 1, most + rows.Starts + unread),
        (_, true) => (0, mayStart ? most + Math.Max(unread - 1, 0) : rows.IsHerdsEnd ? 0 : Math.Max(most - 1, 0)),
        _ => (mayEnd ? 0 : least, mayStart ? Math.Max(most + unread, 1) : most),
    };
}
