namespace Byrelaw.Planning.Recipients;

/// <summary>How many animals it takes so that so many are accepted, as surely as wished.</summary>
/// <param name="Accepted">So many at least.</param>
/// <param name="Certainty">Wished, between 0 and 1.</param>
/// <param name="Animals">To treat or watch, with all that is not known of the rate; null where no number within the limit is enough.</param>
/// <param name="IfRateIsExact">The same, were the rate known exactly.</param>
/// <param name="Limit">The most that were tried.</param>
/// <param name="Reached">The certainty of <paramref name="Animals"/>, or of the most that were tried.</param>
public sealed record Enough(int Accepted, double Certainty, int? Animals, int? IfRateIsExact, int Limit, double Reached)
{
    /// <summary>Finds the number.</summary>
    /// <param name="accepted">0 or more.</param>
    /// <param name="certainty">Between 0 and 1.</param>
    /// <param name="used">The share of animals that is accepted.</param>
    /// <param name="limit">The most to try: what the farm has, or any large number.</param>
    public static Enough Of(int accepted, double certainty, Rate used, int limit)
    {
        var (animals, reached) = Fewest(accepted, certainty, used, limit);
        return new(accepted, certainty, animals, Fewest(accepted, certainty, new(used.Share), limit).Animals, limit, reached);
    }

    private static (int? Animals, double Reached) Fewest(int accepted, double certainty, Rate used, int limit)
    {
        var (animals, reached) = (0, 0.0);
        foreach (var counts in Counts.OneByOne(limit, used))
        {
            reached = counts.AtLeast(accepted);
            if (reached >= certainty)
            {
                return (animals, reached);
            }

            animals++;
        }

        return (null, reached);
    }
}
