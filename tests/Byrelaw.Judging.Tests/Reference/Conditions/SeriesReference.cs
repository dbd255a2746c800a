namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// "The 3 latest days with a sample, not after d, in the window. Fewer: not known, whatever they say. A pending or unreadable sample takes its place among them"; "`every`: all of them satisfy. None in
/// the window: not known, never all of nothing"; "of several results of one day, each". A row that cannot be read and may be among the last ones leaves open which these are, and so does one of her mob.
/// </summary>
public static class SeriesReference
{
    public static Truth At(SeriesCondition condition, Knowledge knowledge, Moment moment) =>
        knowledge.Windows.Possible(condition.Windows, moment.Animal, moment.Day, moment.Strict) is { } possible
            ? Kleene.SameForAll(possible.Select(stretch => Over(condition, stretch, knowledge, moment)))
            : Truth.Unknown;

    public static Truth Over(SeriesCondition condition, Stretch stretch, Knowledge knowledge, Moment moment)
    {
        var facts = knowledge.Farm.Animals[moment.Animal].Facts;
        var looked = Looked.At(condition, stretch, knowledge, moment);
        if (!looked.IsEnough || (condition.Results > 0 && (looked.Unread || looked.OfGroups.Count > 0)))
        {
            return Truth.Unknown;
        }

        if (condition.How != Aggregate.Every)
        {
            return NumberReference.Compare(condition.Test!, Value(condition, looked.Rows), facts);
        }

        var all = looked.Rows.Select(row => condition.Test is { } test ? NumberReference.Compare(test, row.Values, facts) : OfAnswer(condition, row))
            .Concat(looked.Unread ? [Truth.Unknown] : [])
            .Concat(looked.OfGroups.Select(row => OfAnswer(condition, row) == Truth.True ? Truth.True : Truth.Unknown));
        return Kleene.All(all);
    }

    /// <summary>The value of all days, each day's being any of its results.</summary>
    public static ValueRange Value(SeriesCondition condition, IEnumerable<Happening> rows)
    {
        var days = rows.GroupBy(row => row.Day).Select(day => day.Select(row => row.Values).Aggregate(ValueRange.Hull)).ToList();
        var (lows, highs) = (days.ConvertAll(day => day.Low), days.ConvertAll(day => day.High));
        return condition.How switch
        {
            Aggregate.Lowest => new ValueRange(lows.Contains(null) ? null : lows.Min(), highs.Where(high => high is not null).DefaultIfEmpty(null).Min()),
            Aggregate.Highest => new ValueRange(lows.Where(low => low is not null).DefaultIfEmpty(null).Max(), highs.Contains(null) ? null : highs.Max()),
            Aggregate.Average => new ValueRange(lows.Contains(null) ? null : lows.Average(), highs.Contains(null) ? null : highs.Average()).Rounded(),
            _ => days.Aggregate(ValueRange.Hull),
        };
    }

    private static Truth OfAnswer(SeriesCondition condition, Happening row) => row.ResultNotKnown ? Truth.Unknown : Kleene.Of(condition.Answers.Contains(row.Answer) != condition.IsNot);

    /// <summary>What is looked at.</summary>
    /// <param name="Rows">Her results on the days that are asked for, or on all there are where these are too few.</param>
    /// <param name="IsEnough">Whether there are as many days.</param>
    /// <param name="From">The first day looked at.</param>
    /// <param name="Unread">Whether a row that cannot be read may be one of them.</param>
    /// <param name="OfGroups">Rows of her mob or the herd that may be.</param>
    public sealed record Looked(IReadOnlyList<Happening> Rows, bool IsEnough, int From, bool Unread, IReadOnlyList<Happening> OfGroups)
    {
        public static Looked At(SeriesCondition condition, Stretch stretch, Knowledge knowledge, Moment moment)
        {
            var rows = knowledge.Farm.Of(moment.Animal, condition.Of).Where(row => stretch.Holds(condition.Of, row.Day)).OrderBy(row => row.Day).ToList();
            var days = rows.Select(row => row.Day).Distinct().OrderDescending().ToList();
            var isEnough = days.Count > 0 && days.Count >= condition.Results;
            var from = isEnough && condition.Results > 0 ? days[condition.Results - 1] : int.MinValue;
            return new Looked(
                [.. rows.Where(row => row.Day >= from)], isEnough, Math.Max(from, stretch.FromFor(condition.Of)),
                SampleReference.In(condition.Of, stretch, knowledge, moment).Unread.Any(row => row.Last >= from),
                condition.Of is TestKind ? [.. EitherWayReference.MayBeHers(condition.Of, stretch, knowledge, moment).Where(row => row.Day >= from)] : []);
        }
    }
}
