namespace Byrelaw.Judging.Criteria;

/// <summary><c>parity at most 6</c>: as recorded, else as counted where calvings are covered from birth.</summary>
internal sealed class ParityCriterion(HerdDays days, ParityCondition condition, int? calving)
    : LeafCriterion(days, condition, restsOnCoverage: true)
{
    private readonly Limits _limits = Limits.Of(condition.Test);

    protected override Kleene Decide(int animal, int day, ref int until, Notes? notes)
    {
        var counted = 0;
        var isCovered = false;
        var isStrictlyCovered = false;
        var mayBeMore = false;
        if (calving is { } kind)
        {
            var run = Days.Herd.Runs[kind];
            var last = Runs.LastAtMost(run, animal, day);
            counted = last + 1 - run.Starts[animal];
            until = Math.Min(until, Days.NextEdge(animal, kind, day) - 1);
            isCovered = Days.Covers(animal, kind, Day.Start, day);
            mayBeMore = Days.Coverage.AnyGap(animal, kind, Day.Start, day);
            isStrictlyCovered = isCovered && !Days.IsOpen(animal, kind, day);
            for (var i = run.Starts[animal]; i <= last; i++)
            {
                notes?.Entry(kind, i);
            }
        }

        var recorded = Days.Herd.RecordedParity[animal];
        if (recorded >= 0)
        {
            notes?.Fact(animal, "parity", ValueText.Write(recorded));
        }

        var least = recorded >= 0 ? recorded : recorded == Unreadable ? 0 : counted;
        var most = mayBeMore ? double.PositiveInfinity : Most(recorded, counted, isCovered);
        var truth = _limits.Accept(least, most);
        notes?.Number(least, most, null, null, 1, _limits);
        if (truth == Truth.Unknown)
        {
            // A parity on record is not what is missing, unless more calvings speak against it.
            if (recorded < counted)
            {
                notes?.FactMissing(animal, "parity", recorded == Unreadable);
            }

            if (calving is { } unread)
            {
                notes?.Unreadable(animal, unread, Day.Start, day);
            }
        }
        else if (truth == Truth.False)
        {
            notes?.Remedy(most < _limits.Low ? new Remedy(RemedyKind.NewEvent, ["calving"]) : new Remedy(RemedyKind.ForGood, ["parity"]));
        }

        return Kleene.Of(truth, _limits.Accept(least, mayBeMore ? most : Most(recorded, counted, isStrictlyCovered)));
    }

    /// <summary>A recorded parity and more calvings than that contradict each other: it may be either, or between.</summary>
    private static double Most(int recorded, int counted, bool isCovered) =>
        recorded >= 0 ? Math.Max(counted, recorded)
        : isCovered && recorded != Unreadable ? counted
        : double.PositiveInfinity;

    private const int Unreadable = -2;
}
