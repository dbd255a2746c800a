namespace Byrelaw.Planning.Forecasting;

/// <summary>What one more would bring.</summary>
/// <param name="OneMore">Of what.</param>
/// <param name="More">How many more of what is wanted, on average.</param>
/// <param name="Chance">By how much the chance of what is wanted rises, between 0 and 1.</param>
public sealed record Worth(Further OneMore, double More, double Chance)
{
    /// <summary>The worth of one more session, and of one more donor or recipient at each session there is.</summary>
    /// <param name="forecaster">Its chain says what is wanted.</param>
    /// <param name="sessions">As planned.</param>
    /// <exception cref="InvalidOperationException">Nothing is wanted.</exception>
    public static ImmutableArray<Worth> Of(Forecaster forecaster, ImmutableArray<SessionSize> sessions)
    {
        var goal = forecaster.Chain.Goal ?? throw new InvalidOperationException("Nothing is wanted, so nothing has a worth.");
        var now = forecaster.Wanted(sessions);
        return
        [
            .. Enum.GetValues<Further>()
                .Where(further => further != Further.Recipient || sessions.All(session => !session.Treated.IsEmpty))
                .Select(further =>
                {
                    var then = forecaster.Wanted(sessions.With(further, 1));
                    return new Worth(further, then.Mean - now.Mean, then.AtLeast(goal.Count) - now.AtLeast(goal.Count));
                }),
        ];
    }
}

/// <summary>What there can be more of.</summary>
public enum Further
{
    /// <summary>A session like the last one.</summary>
    Session,

    /// <summary>A donor at every session; for frozen embryos, a straw.</summary>
    Donor,

    /// <summary>A recipient at every session, by the first of its methods.</summary>
    Recipient,

    /// <summary>A donor at every session, and recipients in the same proportion.</summary>
    DonorWithRecipients,
}
