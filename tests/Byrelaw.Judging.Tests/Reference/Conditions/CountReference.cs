namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// "Counts. Reached whatever is missing: true. Passed whatever is missing: false. Else true or false only where every named
/// kind is covered over the whole window, else not known."
/// </summary>
public static class CountReference
{
    public static Truth At(CountCondition condition, Knowledge knowledge, Moment moment) =>
        knowledge.Windows.Possible(condition.Windows, moment.Animal, moment.Day, moment.Strict) is { } possible
            ? Kleene.SameForAll(possible.Select(stretch => Between(condition, stretch, knowledge, moment)).Select(count => Comparing.Count(condition.Test, count.AtLeast, count.AtMost)))
            : Truth.Unknown;

    /// <summary>A sample whose result is not known may count, or a row that may be one cannot be read.</summary>
    public static bool UsesResultNotKnown(CountCondition condition, Stretch stretch, Knowledge knowledge, Moment moment) =>
        condition.Counted.Select(counted => counted.Kind).OfType<TestKind>().DistinctBy(kind => kind.Id).Any(test =>
        {
            var (sure, perhaps) = (0, 0);
            Count(condition, test, stretch.FromFor(test), stretch.To, knowledge.Farm.Of(moment.Animal, test), ref sure, ref perhaps);
            return perhaps > 0 || MoreOfGroups(condition, test, stretch, knowledge, moment) > 0 || SampleReference.In(test, stretch, knowledge, moment).AnyUnread;
        });

    /// <summary>How many more answers there are if all rows of mobs and of the herd that may be hers are.</summary>
    private static int MoreOfGroups(CountCondition condition, TestKind test, Stretch stretch, Knowledge knowledge, Moment moment)
    {
        var own = knowledge.Farm.Of(moment.Animal, test);
        var (sure, perhaps, sureOfAll, perhapsOfAll) = (0, 0, 0, 0);
        Count(condition, test, stretch.FromFor(test), stretch.To, own, ref sure, ref perhaps);
        Count(condition, test, stretch.FromFor(test), stretch.To,
            [.. own.Concat(EitherWayReference.MayBeHers(test, stretch, knowledge, moment)).OrderBy(row => row.Day)], ref sureOfAll, ref perhapsOfAll);
        return sureOfAll + perhapsOfAll - sure - perhaps;
    }

    /// <summary>How many there are of the days given, and how many there may be; no most where not all days are covered.</summary>
    public static (int AtLeast, int? AtMost) Between(CountCondition condition, Stretch stretch, Knowledge knowledge, Moment moment)
    {
        var sure = 0;
        var perhaps = 0;
        var covered = true;
        for (var i = 0; i < condition.Counted.Length; i++)
        {
            var kind = condition.Counted[i].Kind;
            var isNew = true;
            for (var before = 0; before < i; before++)
            {
                isNew &= condition.Counted[before].Kind.Id != kind.Id;
            }

            if (isNew)
            {
                var from = stretch.FromFor(kind);
                covered &= knowledge.Coverage.Covers(moment.Animal, kind, from, stretch.To, moment.Strict);
                Count(condition, kind, from, stretch.To, knowledge.Farm.Of(moment.Animal, kind), ref sure, ref perhaps);

                // Each row of a mob or the herd may be hers or not: any number of the answers that they add.
                perhaps += kind is TestKind test ? MoreOfGroups(condition, test, stretch, knowledge, moment) : 0;
            }
        }

        return (sure, covered ? sure + perhaps : null);
    }

    private static void Count(CountCondition condition, Kind kind, int from, int to, IReadOnlyList<Happening> rows, ref int sure, ref int perhaps)
    {
        for (var i = 0; i < rows.Count; i++)
        {
            var day = rows[i].Day;
            if (day < from || day > to || (i > 0 && rows[i - 1].Day == day))
            {
                continue;
            }

            if (kind is not TestKind)
            {
                // "One kind (or answer) on one day counts once, from however many sources."
                sure++;
                continue;
            }

            // "A result not known may be any value: counts ... answer only what is the same for every value": each sample
            // whose result is not known may add one of the answers that the day does not have yet.
            var today = rows.Where(row => row.Day == day).ToList();
            var counted = condition.Counted.Where(one => one.Kind.Id == kind.Id).Select(one => one.Answer).Distinct().ToList();
            var found = counted.Count(answer => today.Any(row => row.Answer == answer));
            sure += found;
            perhaps += Math.Min(today.Count(row => row.ResultNotKnown), counted.Count - found);
        }
    }
}
