namespace Byrelaw.Planning.Forecasting;

/// <summary>Sessions with more of something.</summary>
internal static class MoreSessions
{
    /// <summary>The sessions with so many more.</summary>
    public static ImmutableArray<SessionSize> With(this ImmutableArray<SessionSize> sessions, Further further, int more) => further switch
    {
        Further.Session => sessions.SetItem(sessions.Length - 1, sessions[^1] with { Times = sessions[^1].Times + more }),
        Further.Donor => [.. sessions.Select(session => session with { Donors = session.Donors + more })],
        Further.Recipient => [.. sessions.Select(session => session with
        {
            Treated = session.Treated.SetItem(0, session.Treated[0] with { Animals = session.Treated[0].Animals + more }),
        })],
        _ => [.. sessions.Select(session => session with
        {
            Donors = session.Donors + more,
            Treated = [.. session.Treated.Select(treated => treated with
            {
                Animals = (int)Math.Ceiling((double)treated.Animals * (session.Donors + more) / Math.Max(session.Donors, 1)),
            })],
        })],
    };
}
