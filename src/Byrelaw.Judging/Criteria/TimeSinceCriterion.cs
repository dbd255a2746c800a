using Byrelaw.Judging.Days;
using Byrelaw.Judging.Explaining;
using Byrelaw.Judging.Truths;
using Byrelaw.Judging.Verdicts;
using Byrelaw.Language.Rulebooks.Conditions;
using Byrelaw.Records.Herds;

namespace Byrelaw.Judging.Criteria;

/// <summary><c>at least 56 days since last calving</c>.</summary>
internal sealed class TimeSinceCriterion(HerdDays days, TimeSinceCondition condition, Anchor anchor)
    : LeafCriterion(days, condition, restsOnCoverage: true)
{
    private readonly TimeLimits _limits = new(condition.Test);

    protected override Truth Decide(int animal, int day, bool strict, ref int until, ref bool pending, Notes? notes)
    {
        var reading = anchor.Read(animal, day, strict, ref until, notes);
        switch (reading.State)
        {
            case AnchorState.NotKnown:
                notes?.Nothing();
                return Truth.Unknown;
            case AnchorState.Never:
                notes?.Never();
                var isAsked = condition.Test.Comparison is Comparison.AtLeast or Comparison.MoreThan;
                if (!isAsked)
                {
                    notes?.Remedy(new Remedy(RemedyKind.NewEvent, Names));
                }

                return isAsked ? Truth.True : Truth.False;
        }

        var (low, high) = _limits.Accepted(day);
        until = Math.Min(until, _limits.NextTurn(reading.Last, day) - 1);
        notes?.Since(reading.Last, day, condition.Test);
        var truth = reading.Last >= low && reading.Last <= high ? Truth.True : Truth.False;
        if (!reading.IsCertain)
        {
            truth = WithDoubt(animal, day, strict, reading, low, high, truth, ref until);
        }

        if (notes is not null && truth == Truth.False)
        {
            notes.Remedy(RemedyOf(reading.Last, day, high));
        }

        return truth;
    }

    private System.Collections.Immutable.ImmutableArray<string> Names => [.. condition.Kinds.Select(kind => kind.Name)];

    /// <summary>It may have happened again, unrecorded, on some later day: the answer stands only if it is the same for each.</summary>
    private Truth WithDoubt(int animal, int day, bool strict, AnchorReading reading, int low, int high, Truth recorded, ref int until)
    {
        // One uncovered stretch up to the day of judging moves only with its first day; anything else is asked daily.
        var first = FirstDoubtful(animal, day, strict, reading.Last);
        var isOneStretch = reading.Latest == day && !IsCoveredSomewhere(animal, first, day, strict);
        until = isOneStretch ? Math.Min(until, _limits.NextTurn(first, day) - 1) : day;
        if (recorded == Truth.True)
        {
            return first >= low && reading.Latest <= high ? Truth.True : Truth.Unknown;
        }

        return anchor.MayHaveHappened(animal, Math.Max(low, reading.Last + 1), Math.Min(high, day), strict) ? Truth.Unknown : Truth.False;
    }

    private int FirstDoubtful(int animal, int day, bool strict, int last)
    {
        var first = int.MaxValue;
        foreach (var kind in anchor.Kinds)
        {
            first = Math.Min(first, Days.FirstUncovered(animal, kind, last + 1, day, strict));
        }

        return first;
    }

    private bool IsCoveredSomewhere(int animal, int from, int to, bool strict)
    {
        // Enough that one kind is uncovered throughout.
        foreach (var kind in anchor.Kinds)
        {
            if (Days.FirstUncovered(animal, kind, from, to, strict) == from
                && Days.NextCoverageEdge(animal, kind, from, strict) > to)
            {
                return false;
            }
        }

        return true;
    }

    private Remedy RemedyOf(int last, int day, int high)
    {
        if (last <= high)
        {
            // Too long ago: only a new one helps.
            return new Remedy(RemedyKind.NewEvent, Names);
        }

        var turns = _limits.FirstAccepting(last);
        return new Remedy(
            RemedyKind.Time, Names, turns > day && turns < Day.End ? Day.Date(turns) : null, high > Day.Start ? Day.Date(high) : null);
    }
}
