namespace Byrelaw.Planning.Recipients;

/// <summary>Animals to treat by one or two methods, so that enough are accepted.</summary>
/// <param name="Treated">By method; a method with no animals is left out.</param>
/// <param name="Cost">Of all of it; null where a method says nothing of its cost.</param>
/// <param name="Chance">That enough are accepted.</param>
/// <param name="IsEnough">Whether that is as sure as wished.</param>
public sealed record Mix(ImmutableArray<Treated> Treated, double? Cost, double Chance, bool IsEnough)
{
    /// <summary>Animals over both methods.</summary>
    public int Animals => Treated.Sum(treated => treated.Animals);

    /// <summary>Accepted on average.</summary>
    public double Expected => Treated.Sum(treated => treated.Animals * treated.Method.Used.Share);

    /// <summary>
    /// The cheapest number by one or two of the methods that is enough, then the one with fewest animals; where none is, the surest. Where a
    /// cost is not said, numbers of animals decide.
    /// </summary>
    /// <param name="options">Methods that may be used; at least one.</param>
    /// <param name="accepted">So many at least.</param>
    /// <param name="certainty">Wished, between 0 and 1.</param>
    /// <param name="animals">The most animals over all methods.</param>
    public static Mix Find(ImmutableArray<Option> options, int accepted, double certainty, int animals)
    {
        var priced = options.All(option => option.Cost is not null);
        var ways = options.Select(option => new Way(option, Math.Min(option.Most, animals))).ToArray();
        Mix? best = null;
        for (var i = 0; i < ways.Length; i++)
        {
            for (var first = 0; first <= ways[i].Most; first++)
            {
                best = Better(best, Make(ways[i], first, null, 0));
                for (var j = i + 1; first > 0 && j < ways.Length; j++)
                {
                    if (Math.Min(ways[j].Most, animals - first) is > 0 and var most)
                    {
                        best = Better(best, Make(ways[i], first, ways[j], Fewest(ways[i], first, ways[j], most)));
                    }
                }
            }
        }

        return best!;

        // More by the other method never makes it less likely, and costs more: so the fewest that are enough, and where none are, all there are.
        int Fewest(Way one, int first, Way other, int most)
        {
            var (none, enough) = (0, most);
            while (enough - none > 1)
            {
                var middle = (none + enough) / 2;
                (none, enough) = one.Enough(first, other, middle, accepted) >= certainty ? (none, middle) : (middle, enough);
            }

            return enough;
        }

        Mix Make(Way one, int first, Way? other, int second)
        {
            var chance = other is null ? one.Enough(first, accepted) : one.Enough(first, other, second, accepted);
            ImmutableArray<Treated> treated = other is null
                ? first == 0 ? [] : [new(one.Option.Preparing, first)]
                : [new(one.Option.Preparing, first), new(other.Option.Preparing, second)];
            return new(treated, priced ? (first * one.Option.Cost) + (second * (other?.Option.Cost ?? 0)) : null, chance, chance >= certainty);
        }
    }

    private static Mix Better(Mix? best, Mix next)
    {
        if (best is null || next.IsEnough != best.IsEnough)
        {
            return best is null || next.IsEnough ? next : best;
        }

        var cheaper = next.IsEnough
            ? (next.Cost ?? next.Animals, next.Animals).CompareTo((best.Cost ?? best.Animals, best.Animals)) < 0
            : (Math.Round(next.Chance, 9), next.Expected).CompareTo((Math.Round(best.Chance, 9), best.Expected)) > 0;
        return cheaper ? next : best;
    }

    /// <summary>One method, with the chances of being accepted for every number of its animals.</summary>
    private sealed class Way(Option option, int most)
    {
        private readonly Counts[] _counts = [.. Counts.OneByOne(most, option.Preparing.Used)];

        public Option Option => option;

        public int Most => most;

        public double Enough(int animals, int accepted) => _counts[animals].AtLeast(accepted);

        public double Enough(int animals, Way other, int others, int accepted)
        {
            // Both together are enough where the other method has what is left after the first.
            var (ours, theirs) = (_counts[animals], other._counts[others]);
            var (enough, rest) = (ours.AtLeast(accepted), theirs.AtLeast(accepted + 1));
            for (var count = 0; count < accepted; count++)
            {
                rest += theirs.Exact(accepted - count);
                enough += ours.Exact(count) * rest;
            }

            return enough;
        }
    }
}
