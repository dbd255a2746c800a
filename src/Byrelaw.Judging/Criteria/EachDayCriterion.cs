namespace Byrelaw.Judging.Criteria;

/// <summary>
/// A condition with windows of which both ends hang on her last X: it is judged for each day on which X may have been last, and stands
/// where it is the same for all.
/// </summary>
/// <param name="days">The herd.</param>
/// <param name="condition">What is asked.</param>
/// <param name="asked">The same, for days that are set.</param>
/// <param name="windows">The windows in which they are set, one or two.</param>
internal sealed class EachDayCriterion(HerdDays days, Condition condition, LeafCriterion asked, EndedWindow[] windows)
    : LeafCriterion(days, condition, restsOnCoverage: true)
{
    /// <summary>What a count is held to; null for others.</summary>
    private readonly Limits? _counted = condition is CountCondition count ? Limits.Of(count.Test) : null;

    protected override Kleene Decide(int animal, int day, ref int until, Notes? notes)
    {
        var possible = new PossibleLast[windows.Length];
        for (var i = 0; i < windows.Length; i++)
        {
            possible[i] = new PossibleLast(windows[i].Of, animal, day, ref until);
        }

        Set(possible, 0, possible.Length > 1 ? 0 : -1);
        var answer = asked.Decided(animal, day, ref until, notes);
        if (Array.TrueForAll(possible, last => last.IsCertain))
        {
            return answer;
        }

        until = day;
        var (assumed, strict) = (answer.Assumed, answer.Strict);
        foreach (var (first, second) in Pairs(possible))
        {
            Set(possible, first, second);
            var other = asked.Decided(animal, day, ref until, null);
            var isAssumed = possible[0].IsAssumed(first) && (second < 0 || possible[1].IsAssumed(second));
            assumed = isAssumed && other.Assumed != assumed ? Truth.Unknown : assumed;
            strict = other.Strict != strict ? Truth.Unknown : strict;
            if (strict == Truth.Unknown && (assumed == Truth.Unknown || (second < 0 && !possible[0].IsAssumed(first))))
            {
                break;
            }
        }

        until = day;
        if (notes is not null && _counted is not null)
        {
            WriteCount(animal, day, possible, notes, _counted.Value);
        }

        // Where X may have been on several days, a rule that passes what is not known passes nobody: not every one of them was looked at for what is pending.
        return Kleene.Of(assumed, strict, pending: true);
    }

    /// <summary>As many as there are whichever day it was, up to as many as there may be on any.</summary>
    private void WriteCount(int animal, int day, PossibleLast[] possible, Notes notes, Limits limits)
    {
        var (least, most) = (int.MaxValue, (int?)0);
        foreach (var (first, second) in Pairs(possible).Where(pair => possible[0].IsAssumed(pair.First) && (pair.Second < 0 || possible[1].IsAssumed(pair.Second))))
        {
            Set(possible, first, second);
            var (until, own) = (day, new Notes(Days, animal));
            asked.Decided(animal, day, ref until, own);
            if (own.FoundSoFar is FoundCount count)
            {
                (least, most) = (Math.Min(least, count.AtLeast), count.AtMost is { } atMost && most is { } before ? Math.Max(before, atMost) : null);
            }
        }

        if (least < int.MaxValue)
        {
            notes.Count(least, most, limits);
        }
    }

    private static IEnumerable<(int First, int Second)> Pairs(PossibleLast[] possible)
    {
        for (var first = 0; first < possible[0].Days.Count; first++)
        {
            for (var second = possible.Length > 1 ? 0 : -1; second < (possible.Length > 1 ? possible[1].Days.Count : 0); second++)
            {
                yield return (first, second);
            }
        }
    }

    private void Set(PossibleLast[] possible, int first, int second)
    {
        windows[0].Set(possible[0].Days[first]);
        if (second >= 0)
        {
            windows[1].Set(possible[1].Days[second]);
        }
    }

    /// <summary>The days on which X may have been last: on record, then those on which nobody says that it was not, then those that only the future leaves open,
    /// of which the last most often settles that it is not known.</summary>
    private sealed class PossibleLast
    {
        private readonly HashSet<int> _seen = [];
        private readonly int _assumed;

        public PossibleLast(Anchor anchor, int animal, int day, ref int until)
        {
            var reading = anchor.Read(animal, day, ref until, null);
            Days.Add(reading.Last);
            _seen.Add(reading.Last);
            if (reading.State == AnchorState.Recorded)
            {
                Add(anchor, animal, reading.Last + 1, reading.Latest, strict: false);
            }

            _assumed = Days.Count;
            if (reading.State == AnchorState.Recorded)
            {
                Add(anchor, animal, reading.Last + 1, reading.StrictLatest, strict: true);
            }

            // The day after this one may be one more of them.
            if (anchor.MayHaveHappened(animal, day + 1, day + 1, strict: true))
            {
                until = Math.Min(until, day);
            }
        }

        public List<int> Days { get; } = [];

        public bool IsCertain => Days.Count == 1;

        public bool IsAssumed(int place) => place < _assumed;

        private void Add(Anchor anchor, int animal, int from, int to, bool strict)
        {
            for (var day = to; day >= from; day--)
            {
                if (anchor.MayHaveHappened(animal, day, day, strict) && _seen.Add(day))
                {
                    Days.Add(day);
                }
            }
        }
    }
}
