namespace Byrelaw.Judging.Days;

/// <summary>
/// The two days after the known day. Coverage stops at the known day: on the first an event may be hidden, and on the
/// second whatever it ended may be over.
/// </summary>
internal readonly struct AfterKnownEdges(int knownDay) : IEdges
{
    public int Next(int day) => day <= knownDay ? knownDay + 1 : day == knownDay + 1 ? day + 1 : int.MaxValue;
}
