namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// "The herd is every female present on the judging day, T of them; k = ceil(T x P / 100); u have no value; r known values
/// are greater than hers. In the top if r + u &lt; k; not in it if r &gt;= k; else not known; no value of her own: not known."
/// Those who may or may not belong to it: the answer holds only if it holds either way.
/// </summary>
public static class StandingReference
{
    public static Truth At(StandingCondition condition, Knowledge knowledge, Moment moment)
    {
        if (knowledge.Farm.Animals[moment.Animal].Facts[condition.Fact.Id].Number is not { } hers)
        {
            return Truth.Unknown;
        }

        if (condition.WithValue)
        {
            var among = AmongThoseWithAValue(condition, hers, knowledge, moment);
            return condition.Not ? Kleene.Not(among) : among;
        }

        var sure = new Standing();
        var perhaps = new Standing();
        foreach (var animal in knowledge.Farm.Animals)
        {
            var member = IsMember(condition.Group, knowledge, moment with { Animal = animal.Index });
            if (member != Truth.False)
            {
                var standing = member == Truth.True ? sure : perhaps;
                standing.Add(animal.Facts[condition.Fact.Id].Number, hers);
            }
        }

        var truths = from greater in Enumerable.Range(0, perhaps.Greater + 1)
                     from notKnown in Enumerable.Range(0, perhaps.NoValue + 1)
                     from others in Enumerable.Range(0, perhaps.Others + 1)
                     select InTheTop(
                         condition.Percent, sure.Count + greater + notKnown + others, sure.Greater + greater, sure.NoValue + notKnown);
        var truth = Kleene.SameForAll(truths);
        return condition.Not ? Kleene.Not(truth) : truth;
    }

    private static Truth InTheTop(double percent, int count, int greater, int noValue)
    {
        var places = (int)Math.Ceiling(count * (decimal)percent / 100);
        return greater + noValue < places ? Truth.True : greater >= places ? Truth.False : Truth.Unknown;
    }

    /// <summary>
    /// "T and r only of females that have a value: the others are not asked about. Another's unreadable: with and without." Every way in which those who may be of
    /// them are, and in which a value that cannot be read is greater or not, is tried.
    /// </summary>
    private static Truth AmongThoseWithAValue(StandingCondition condition, decimal hers, Knowledge knowledge, Moment moment)
    {
        HashSet<(int Count, int Greater)> ways = [(0, 0)];
        foreach (var animal in knowledge.Farm.Animals)
        {
            var (member, fact) = (IsMember(condition.Group, knowledge, moment with { Animal = animal.Index }), animal.Facts[condition.Fact.Id]);
            if (member == Truth.False || fact.IsBlank)
            {
                continue;
            }

            var may = fact.Number is { } value ? new[] { value > hers ? (1, 1) : (1, 0) } : [(1, 1), (1, 0), (0, 0)];
            may = member == Truth.True ? may : [.. may, (0, 0)];
            ways = [.. ways.SelectMany(way => may.Select(one => (way.Count + one.Item1, way.Greater + one.Item2)))];
        }

        return Kleene.SameForAll(ways.Select(way => InTheTop(condition.Percent, way.Count, way.Greater, 0)));
    }

    /// <summary>Whether she is of the group, on the day.</summary>
    public static Truth IsMember(HerdGroup group, Knowledge knowledge, Moment moment) => Kleene.And(
        knowledge.Farm.Presence.At(moment.Animal, moment.Day),
        group switch
        {
            HerdGroup.Cows => SortReference.Cow(knowledge, moment),
            HerdGroup.Heifers => SortReference.Heifer(knowledge, moment),
            _ => SortReference.Female(knowledge, moment),
        });

    private sealed class Standing
    {
        public int Greater { get; private set; }

        public int NoValue { get; private set; }

        public int Others { get; private set; }

        public int Count => Greater + NoValue + Others;

        public void Add(decimal? value, decimal hers)
        {
            if (value is not { } known)
            {
                NoValue++;
            }
            else if (known > hers)
            {
                Greater++;
            }
            else
            {
                Others++;
            }
        }
    }
}
