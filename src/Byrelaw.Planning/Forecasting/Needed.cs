namespace Byrelaw.Planning.Forecasting;

/// <summary>How many would be needed to be as sure as wished.</summary>
/// <param name="Of">Of what, the others staying as planned.</param>
/// <param name="More">How many more than planned; 0 where the plan is sure enough; null where no number within the limit is.</param>
/// <param name="Limit">The most that were tried.</param>
/// <param name="Room">How many more there are to be had.</param>
/// <param name="Chance">Of what is wanted, with so many more; with the most that were tried, where that is not enough.</param>
public sealed record Needed(Further Of, int? More, int Limit, int Room, double Chance)
{
    /// <summary>Whether so many more are enough and can be had.</summary>
    public bool CanBeHad => More <= Room;

    /// <summary>The smallest number of more that is enough.</summary>
    /// <param name="forecaster">Its chain says what is wanted, and how surely.</param>
    /// <param name="sessions">As planned.</param>
    /// <param name="further">More of what.</param>
    /// <param name="limit">The most to try; 0 or more.</param>
    /// <param name="room">How many more there are to be had.</param>
    /// <exception cref="InvalidOperationException">Nothing is wanted.</exception>
    public static Needed Find(Forecaster forecaster, ImmutableArray<SessionSize> sessions, Further further, int limit, int room)
    {
        var goal = forecaster.Chain.Goal ?? throw new InvalidOperationException("Nothing is wanted, so nothing is needed.");

        // More of anything never makes it less likely, so the limit is tried first and then the middle.
        var (none, enough, at) = (-1, limit, ChanceWith(limit));
        if (at < goal.Certainty)
        {
            return new(further, null, limit, room, at);
        }

        while (enough - none > 1)
        {
            var middle = (none + enough) / 2;
            var then = ChanceWith(middle);
            (none, enough, at) = then >= goal.Certainty ? (none, middle, then) : (middle, enough, at);
        }

        return new(further, enough, limit, room, at);

        double ChanceWith(int more) => forecaster.Wanted(sessions.With(further, more)).AtLeast(goal.Count);
    }
}
