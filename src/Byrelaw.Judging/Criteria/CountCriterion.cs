using Byrelaw.Judging.Days;
using Byrelaw.Judging.Explaining;
using Byrelaw.Judging.Truths;
using Byrelaw.Judging.Verdicts;
using Byrelaw.Language.Rulebooks.Conditions;
using Byrelaw.Records.Herds;

namespace Byrelaw.Judging.Criteria;

/// <summary><c>no mastitis or metritis in the last 30 days</c>.</summary>
internal sealed class CountCriterion(HerdDays days, CountCondition condition, WindowSet windows)
    : LeafCriterion(days, condition, restsOnCoverage: true)
{
    private readonly Limits _limits = Limits.Of(condition.Test);
    private readonly Counted[] _counted = [.. condition.Counted];

    protected override Truth Decide(int animal, int day, bool strict, ref int until, ref bool pending, Notes? notes)
    {
        if (!windows.Read(animal, day, strict, out var reading, ref until, notes))
        {
            notes?.Nothing();
            return Truth.Unknown;
        }

        var least = 0;
        var most = 0;
        var isCovered = true;
        var isCertain = true;
        foreach (var counted in _counted)
        {
            var kind = counted.Kind.Id;
            windows.Limit(animal, day, kind, strict, reading, ref until);
            var bounds = windows.For(kind, reading);
            Count(animal, counted, bounds.LowLatest, bounds.High, ref least, countDoubtful: false, ref pending, null);
            Count(animal, counted, bounds.Low, bounds.High, ref most, countDoubtful: true, ref pending, notes);
            isCertain &= bounds.IsCertain;
            if (!Days.Coverage.Covers(animal, kind, bounds.Low, bounds.High, strict))
            {
                isCovered = false;
                notes?.NotKept(kind, bounds.Low, bounds.High);
            }
        }

        var truth = isCertain || _limits.IsOneSided(0)
            ? _limits.Accept(least, isCovered ? most : double.PositiveInfinity)
            : ForEveryAnchor(animal, day, strict, reading, ref until);
        notes?.Count(least, isCovered ? most : null, _limits);
        if (notes is not null && truth == Truth.False)
        {
            notes.Remedy(RemedyOf(most));
        }

        return truth;
    }

    /// <summary>Counts one kind, each day once. A result that is not known may be any answer: it counts only where doubt does.</summary>
    private void Count(int animal, Counted counted, int low, int high, ref int count, bool countDoubtful, ref bool pending, Notes? notes)
    {
        var run = Days.Herd.Runs[counted.Kind.Id];
        var start = run.Starts[animal];
        var i = Runs.LastAtMost(run, animal, high);
        if (counted.Answer < 0)
        {
            for (; i >= start && run.Days[i] >= low; i--)
            {
                count++;
                notes?.Entry(counted.Kind.Id, i);
            }

            return;
        }

        while (i >= start && run.Days[i] >= low)
        {
            var day = run.Days[i];
            var has = false;
            var mayHave = false;
            for (; i >= start && run.Days[i] == day; i--)
            {
                has |= run.Answers[i] == counted.Answer;
                mayHave |= run.Answers[i] == KindRun.NotKnown;
                if (run.Answers[i] == counted.Answer || run.Answers[i] == KindRun.NotKnown)
                {
                    notes?.Entry(counted.Kind.Id, i);
                }
            }

            if (has || (mayHave && countDoubtful))
            {
                count++;
            }

            if (!has && mayHave)
            {
                pending = true;
                notes?.Pending(counted.Kind.Id, i + 1);
            }
        }
    }

    /// <summary>An exact number neither only grows nor only shrinks with the window, so every day on which the
    /// anchor may have been is tried in turn.</summary>
    private Truth ForEveryAnchor(int animal, int day, bool strict, WindowSet.Reading reading, ref int until)
    {
        until = day;
        Truth? together = null;
        var ignored = false;
        foreach (var possible in windows.Possible(animal, day, strict, reading))
        {
            var least = 0;
            var most = 0;
            var isCovered = true;
            foreach (var counted in _counted)
            {
                var bounds = windows.For(counted.Kind.Id, possible);
                Count(animal, counted, bounds.Low, bounds.High, ref least, false, ref ignored, null);
                Count(animal, counted, bounds.Low, bounds.High, ref most, true, ref ignored, null);
                isCovered &= Days.Coverage.Covers(animal, counted.Kind.Id, bounds.Low, bounds.High, strict);
            }

            var truth = _limits.Accept(least, isCovered ? most : double.PositiveInfinity);
            if (together is { } before && before != truth)
            {
                return Truth.Unknown;
            }

            together = truth;
        }

        return together ?? Truth.Unknown;
    }

    private Remedy RemedyOf(int most)
    {
        var names = condition.Counted.Select(counted => counted.Kind.Name).Distinct(StringComparer.Ordinal);
        if (most < _limits.Low)
        {
            return new Remedy(_counted[0].Answer < 0 ? RemedyKind.NewEvent : RemedyKind.NewResult, [.. names]);
        }

        // Too many: only a window that moves on, or a new anchor, can leave some of them behind.
        foreach (var window in condition.Windows)
        {
            switch (window)
            {
                case InTheLast or BetweenAgo:
                    return new Remedy(RemedyKind.Time, []);
                case SinceLast since:
                    return new Remedy(RemedyKind.NewEvent, [.. since.Kinds.Select(kind => kind.Name)]);
                case FromAfterLast after:
                    return new Remedy(RemedyKind.NewEvent, [.. after.Kinds.Select(kind => kind.Name)]);
            }
        }

        return new Remedy(RemedyKind.ForGood, [.. names]);
    }
}
