namespace Byrelaw.Judging.Tests.Reference;

/// <summary>Which results of hers are missing.</summary>
public static class MissingResults
{
    /// <param name="condition">A test that is not known.</param>
    /// <param name="widest">The days looked at, for the earliest day that they may begin on.</param>
    /// <param name="latest">The latest day that they may begin on.</param>
    /// <param name="knowledge">The records.</param>
    /// <param name="moment">Who, and when.</param>
    public static IEnumerable<Missing> OfTest(TestCondition condition, Stretch widest, int latest, Knowledge knowledge, Moment moment) =>
        Latest(condition.Test, widest, latest, true, sample => sample.ResultNotKnown, knowledge, moment, TestReference.LastAgainst(condition, widest, knowledge, moment));

    /// <summary>The same for a measure.</summary>
    public static IEnumerable<Missing> OfMeasure(MeasuredCondition condition, Stretch widest, int latest, Knowledge knowledge, Moment moment)
    {
        var animal = knowledge.Farm.Animals[moment.Animal];
        var limits = MissingReference.Limits(condition.Test, animal).ToList();
        return limits.Concat(condition.Aggregate == Aggregate.Latest
            ? Latest(
                condition.Measure, widest, latest, limits.Count == 0,
                sample => IsVague(sample.Values) && NumberReference.Compare(condition.Test, sample.Values, animal.Facts) == Truth.Unknown, knowledge, moment)
            : Over(condition, widest, limits.Count == 0, knowledge, moment));
    }

    /// <summary>The latest sample: there is none; it does not say; a row that could not be read may be later; or, where they do
    /// not agree or it is from before days that may not count, a newer one.</summary>
    private static IEnumerable<Missing> Latest(
        Kind kind, Stretch widest, int latest, bool isLimitKnown, Func<Happening, bool> doesNotSay, Knowledge knowledge, Moment moment, int lastOfGroups = int.MinValue)
    {
        var rows = knowledge.Farm.Of(moment.Animal, kind).Where(row => widest.Holds(kind, row.Day)).ToList();
        var days = new MissingDays(knowledge, moment);
        var (from, to) = (widest.FromFor(kind), widest.To);
        if (rows.Count == 0)
        {
            var mayBe = Unread(kind, from, to, knowledge, moment);
            return mayBe.Count > 0 ? mayBe : [NoResult(kind, from, to, days)];
        }

        var last = rows[^1].Day;
        var unsettled = rows.Where(row => row.Day == last && doesNotSay(row)).ToList();
        var unread = Unread(kind, last, to, knowledge, moment);
        var isPending = unread.Count > 0 || unsettled.Exists(row => row.ResultNotKnown);
        return [.. unsettled.Select(Unsettled), .. unread,
            .. !isPending && (isLimitKnown || last < latest) ? new[] { NoResult(kind, Math.Max(Math.Max(last, lastOfGroups) + 1, latest), to, days) } : []];
    }

    /// <summary>The results of all the days.</summary>
    private static IEnumerable<Missing> Over(MeasuredCondition condition, Stretch widest, bool isLimitKnown, Knowledge knowledge, Moment moment)
    {
        var kind = condition.Measure;
        var days = new MissingDays(knowledge, moment);
        var (from, to) = (widest.FromFor(kind), widest.To);
        var rows = knowledge.Farm.Of(moment.Animal, kind).Where(row => widest.Holds(kind, row.Day)).ToList();
        var isChange = condition.Aggregate == Aggregate.Change;
        var unread = rows.Count > 0 && isChange
            ? [.. Unread(kind, from, rows[0].Day, knowledge, moment), .. Unread(kind, rows[^1].Day, to, knowledge, moment)]
            : Unread(kind, from, to, knowledge, moment);
        if (rows.Count == 0 || (isChange && rows[0].Day == rows[^1].Day))
        {
            return rows.Count == 0 && unread.Count > 0 ? unread : [.. unread, NoResult(kind, from, to, days)];
        }

        if (isChange)
        {
            // One between the first and the last changes no change.
            rows = rows.FindAll(row => row.Day == rows[0].Day || row.Day == rows[^1].Day);
        }

        // It may be known of these days, and not of others that they may be.
        if (MeasuredReference.Over(condition, widest, knowledge, moment) != Truth.Unknown)
        {
            return unread;
        }

        var vague = rows.Where(row => IsVague(row.Values)).Select(Unsettled).ToList();
        return [.. unread, .. vague,
            .. unread.Count == 0 && vague.Count == 0 && isLimitKnown ? new[] { NoResult(kind, rows[^1].Day + 1, to, days) } : []];
    }

    /// <summary>Several results: too few, or some that do not say.</summary>
    public static IEnumerable<Missing> OfSeries(SeriesCondition condition, Stretch widest, Knowledge knowledge, Moment moment)
    {
        var animal = knowledge.Farm.Animals[moment.Animal];
        var limits = condition.Test is { } test ? MissingReference.Limits(test, animal).ToList() : [];
        var looked = SeriesReference.Looked.At(condition, widest, knowledge, moment);
        var (kind, days) = (condition.Of, new MissingDays(knowledge, moment));
        var unread = Unread(kind, looked.From, widest.To, knowledge, moment);
        var later = looked.Rows.Count == 0 ? widest.FromFor(kind) : looked.Rows[^1].Day + 1;
        if (!looked.IsEnough)
        {
            return [.. limits, .. unread, .. unread.Count == 0 ? new[] { NoResult(kind, later, widest.To, days) } : []];
        }

        if (SeriesReference.Over(condition, widest, knowledge, moment) != Truth.Unknown)
        {
            return [.. limits, .. unread];
        }

        var vague = looked.Rows.Where(row => condition.Test is null ? row.ResultNotKnown : IsVague(row.Values)).Select(Unsettled).ToList();
        return [.. limits, .. unread, .. vague, .. unread.Count == 0 && vague.Count == 0 && limits.Count == 0 ? new[] { NoResult(kind, later, widest.To, days) } : []];
    }

    private static List<Missing> Unread(Kind kind, int from, int to, Knowledge knowledge, Moment moment) =>
        [.. new MissingDays(knowledge, moment).Unread(kind, from, to)];

    private static bool IsVague(ValueRange values) => values.IsAny || values.Low != values.High;

    private static Missing NoResult(Kind kind, int from, int to, MissingDays days) =>
        new(MissingReason.NoResult, kind.Declaration.Name, days.Date(from), days.Date(to), MissingReference.ByWhom(kind)) { Filter = MissingReference.FilterOf(kind) };

    private static Missing Unsettled(Happening row) => new(
        row.ResultNotKnown ? MissingReason.ResultPending : MissingReason.ResultTooVague, row.Kind.Declaration.Name,
        DayNumber.Date(row.Day), DayNumber.Date(row.Day), SettledBy.LaboratoryOrTime, row.Line);
}
