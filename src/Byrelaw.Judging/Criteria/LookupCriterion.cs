using Byrelaw.Judging.Days;
using Byrelaw.Judging.Explaining;
using Byrelaw.Judging.Truths;
using Byrelaw.Judging.Verdicts;
using Byrelaw.Language.Rulebooks.Conditions;
using Byrelaw.Language.Rulebooks.Words;
using Byrelaw.Records.Herds;

namespace Byrelaw.Judging.Criteria;

/// <summary>
/// What <c>latest</c> means, for measures and tests alike: the latest recorded in the window. A sample
/// whose result is not known is the latest all the same, and so may be a row that could not be read.
/// </summary>
internal abstract class LookupCriterion(HerdDays days, Condition condition, Kind kind, WindowSet windows)
    : LeafCriterion(days, condition, restsOnCoverage: true)
{
    protected int KindId { get; } = kind.Id;

    protected KindRun Run { get; } = days.Herd.Runs[kind.Id];

    protected WindowSet Windows { get; } = windows;

    /// <summary>Reads the windows; false where they are anchored to something of which nothing is known.</summary>
    protected bool ReadWindows(int animal, int day, bool strict, out WindowSet.Reading reading, out Bounds bounds, ref int until, Notes? notes)
    {
        if (!Windows.Read(animal, day, strict, out reading, ref until, notes))
        {
            notes?.Nothing();
            bounds = default;
            return false;
        }

        Windows.Limit(animal, day, KindId, strict, reading, ref until);
        bounds = Windows.For(KindId, reading);
        return true;
    }

    /// <summary>The truth of all results of the latest day in the window: one for all, or not known.</summary>
    protected Truth Latest(int animal, Bounds bounds, ref bool pending, Notes? notes)
    {
        var start = Run.Starts[animal];
        var last = Runs.LastAtMost(Run, animal, bounds.High);
        if (last < start || Run.Days[last] < bounds.Low)
        {
            notes?.Nothing();
            if (IsUnreadable(animal, bounds.Low, bounds.High, notes))
            {
                pending = true;
            }
            else
            {
                notes?.NoResult(KindId, bounds.Low, bounds.High);
            }

            return Truth.Unknown;
        }

        var latest = Run.Days[last];
        var truth = TruthOf(animal, last, ref pending, notes);
        notes?.Entry(KindId, last);
        var first = last;
        while (first > start && Run.Days[first - 1] == latest)
        {
            first--;
            notes?.Entry(KindId, first);
            if (TruthOf(animal, first, ref pending, notes) != truth)
            {
                truth = Truth.Unknown;
            }
        }

        WriteFound(animal, first, last, notes);
        if (latest < bounds.LowLatest)
        {
            // Too early, should her anchor have been later than on record.
            notes?.NoResult(KindId, bounds.LowLatest, bounds.High);
            truth = Truth.Unknown;
        }

        if (IsUnreadable(animal, Math.Max(latest, bounds.Low), bounds.High, notes))
        {
            pending = true;
            truth = Truth.Unknown;
        }

        if (truth == Truth.Unknown && notes is not null && !pending)
        {
            notes.NoResult(KindId, Math.Max(latest + 1, bounds.Low), bounds.High);
        }

        if (truth == Truth.False)
        {
            notes?.Remedy(new Remedy(RemedyKind.NewResult, [kind.Name]));
        }

        return truth;
    }

    /// <summary>Whether a row that could not be read may be a sample dated in these days.</summary>
    protected bool IsUnreadable(int animal, int from, int to, Notes? notes)
    {
        if (to < from || !Days.Coverage.AnyGap(animal, KindId, from, to))
        {
            return false;
        }

        notes?.Unreadable(animal, KindId, from, to);
        return true;
    }

    /// <summary>The truth of one result.</summary>
    protected abstract Truth TruthOf(int animal, int place, ref bool pending, Notes? notes);

    /// <summary>Notes the results of the latest day.</summary>
    protected abstract void WriteFound(int animal, int first, int last, Notes? notes);
}
