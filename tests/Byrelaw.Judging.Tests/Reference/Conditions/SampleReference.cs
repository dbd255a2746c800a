namespace Byrelaw.Judging.Tests.Reference;

/// <summary>A result, or what a row that cannot be read may have been.</summary>
/// <param name="Day">When.</param>
/// <param name="Values">For a measure.</param>
/// <param name="Answer">For a test; -1 where it is not known.</param>
/// <param name="ResultNotKnown">Blank, pending, not declared or unreadable.</param>
public sealed record Sample(int Day, ValueRange Values, int Answer, bool ResultNotKnown);

/// <summary>The samples of one kind in a window.</summary>
/// <param name="Recorded">Readable ones, oldest first.</param>
/// <param name="Unread">
/// "For lookups it is a sample with result not known in every window that its date could fall in": the days in the window
/// that each unreadable row may be of, from the first to the last.
/// </param>
public sealed record Samples(IReadOnlyList<Sample> Recorded, IReadOnlyList<(int First, int Last)> Unread)
{
    private static readonly Sample NotKnown = new(0, ValueRange.Any, -1, true);

    public bool AnyUnread => Unread.Count > 0;

    /// <summary>All that may be of the latest day: "an older one never stands in" for a sample whose result is not known.</summary>
    public IEnumerable<Sample> Latest()
    {
        var latest = Recorded.Count == 0 ? int.MinValue : Recorded[^1].Day;
        return Recorded.Where(sample => sample.Day == latest)
            .Concat(Unread.Where(row => row.Last >= latest).Select(row => NotKnown with { Day = row.Last }));
    }

    /// <summary>All that may be of the earliest day.</summary>
    public IEnumerable<Sample> Earliest()
    {
        var earliest = Recorded.Count == 0 ? int.MaxValue : Recorded[0].Day;
        return Recorded.Where(sample => sample.Day == earliest)
            .Concat(Unread.Where(row => row.First <= earliest).Select(row => NotKnown with { Day = row.First }));
    }
}

/// <summary>
/// "A mob's or herd's test row may or may not be each member's: an answer holds if it holds either way." Each way is a choice of those rows that may be
/// hers, laid among her own; the empty choice is one, so none of them proves anything.
/// </summary>
public static class EitherWayReference
{
    /// <summary>Rows that may be hers: "she may have been in that mob and in the herd that day".</summary>
    public static IReadOnlyList<Happening> MayBeHers(Kind kind, Stretch stretch, Knowledge knowledge, Moment moment) =>
        [.. knowledge.Farm.GroupResults.Where(row => row.Result.Kind.Id == kind.Id && stretch.Holds(kind, row.Result.Day)
            && !(row.Result.Day < knowledge.Farm.Animals[moment.Animal].BornFirst)
            && knowledge.Farm.Presence.At(moment.Animal, row.Result.Day) != Truth.False
            && (row.Mob is not { } mob || knowledge.Where.MobsOn(moment.Animal, row.Result.Day, false).Any(hers => hers is null || hers == mob)))
            .Select(row => row.Result).OrderBy(row => row.Day)];

    /// <summary>Every choice of them; of many, single ones and all together, which tell as much.</summary>
    public static IEnumerable<IReadOnlyList<Happening>> Choices(IReadOnlyList<Happening> rows) => rows.Count > 6
        ? rows.Select(row => (IReadOnlyList<Happening>)[row]).Append(rows).Prepend([])
        : Enumerable.Range(0, 1 << rows.Count).Select(set => (IReadOnlyList<Happening>)[.. rows.Where((_, place) => (set >> place & 1) == 1)]);
}

/// <summary>Finds the samples of one animal.</summary>
public static class SampleReference
{
    public static Samples In(Kind kind, Stretch stretch, Knowledge knowledge, Moment moment, IEnumerable<Happening>? ofGroups = null)
    {
        var recorded = knowledge.Farm.Of(moment.Animal, kind).Concat(ofGroups ?? []).OrderBy(row => row.Day)
            .Where(row => stretch.Holds(kind, row.Day))
            .Select(row => new Sample(row.Day, row.Values, row.Answer, row.ResultNotKnown));
        // Nothing was sampled before she was born.
        var from = Math.Max(stretch.FromFor(kind), knowledge.Farm.Animals[moment.Animal].BornFirst ?? int.MinValue);
        var unread = knowledge.Farm.Unread
            .Where(row => row.MayBeOf(knowledge.Farm.Animals[moment.Animal]) && row.MayBeA(kind) && row.MayBeIn(from, stretch.To))
            .Select(row => (row.Day ?? from, row.Day ?? stretch.To));
        return new Samples([.. recorded], [.. unread]);
    }
}
