namespace Byrelaw.Judging.Criteria;

/// <summary><c>no mastitis or metritis in the last 30 days</c>.</summary>
internal sealed partial class CountCriterion(HerdDays days, CountCondition condition, WindowSet windows)
    : LeafCriterion(days, condition, restsOnCoverage: true)
{
    private readonly Limits _limits = Limits.Of(condition.Test);

    /// <summary>Each kind once, with the answers of it that count; none for an event.</summary>
    private readonly (int Kind, byte[] Answers)[] _counted =
        [.. condition.Counted.GroupBy(counted => counted.Kind.Id).Select(kind =>
            (kind.Key, kind.Where(counted => counted.Answer >= 0).Select(counted => (byte)counted.Answer).Distinct().ToArray()))];

    private readonly GroupSamples?[] _groups =
        [.. condition.Counted.GroupBy(counted => counted.Kind.Id).Select(kind => kind.First().Answer < 0 ? null : GroupSamples.Of(days, kind.Key))];

    private readonly int[] _kinds = [.. condition.Counted.Select(counted => counted.Kind.Id).Distinct()];

    protected override Kleene Decide(int animal, int day, ref int until, Notes? notes)
    {
        var reading = windows.Read(animal, day, ref until, notes);
        if (!reading.IsKnown)
        {
            notes?.Nothing();
            return Kleene.Unknown;
        }

        var tally = new Tally { IsCovered = true, IsStrictlyCovered = reading.IsStrictlyKnown, IsCertain = true, IsStrictlyCertain = true };
        for (var i = 0; i < _counted.Length; i++)
        {
            var (kind, answers) = _counted[i];
            var bounds = windows.For(kind, reading);
            var first = answers.Length == 0
                ? CountEvents(animal, kind, bounds, ref tally, notes)
                : CountAnswers(animal, kind, answers, bounds, ref tally, notes);
            if (_groups[i] is { } group)
            {
                CountPerhapsHers(group, animal, kind, answers, bounds, ref tally, notes);
                windows.LimitBy(group.Edges, day, reading, ref until);
            }

            if (windows.Only is { } only && bounds.Low <= day)
            {
                LimitByOnly(only, animal, day, kind, bounds, first, ref until);
            }
            else
            {
                windows.Limit(animal, day, kind, reading, ref until);
            }

            if (!Days.Covers(animal, kind, bounds.Low, bounds.High))
            {
                tally.IsCovered = false;
                // A row that cannot be read may be a sample, its result not known.
                tally.IsPending |= answers.Length > 0 && Days.Coverage.AnyGap(animal, kind, bounds.Low, bounds.High);
                notes?.NotKept(kind, bounds.Low, bounds.High);
            }

            tally.IsStrictlyCovered &= bounds.High < bounds.Low || !Days.IsOpen(animal, kind, bounds.High);
            tally.IsCertain &= bounds.IsCertain;
            tally.IsStrictlyCertain &= bounds.IsStrictlyCertain;
            tally.BeginsEarlier |= bounds.StrictlyEarlier > 0;
        }

        var assumed = tally.IsCertain || _limits.IsOneSided(0)
            ? _limits.Accept(tally.Least, tally.IsCovered ? tally.Most : double.PositiveInfinity)
            : ForEveryAnchor(animal, day, strict: false, reading, ref until);
        var strict = Strict(animal, day, assumed, tally, reading, ref until);
        if (notes is not null)
        {
            notes.Count(tally.Least, tally.IsCovered ? tally.Most : null, _limits);
            if (assumed == Truth.False)
            {
                notes.Remedy(RemedyOf(tally.Most));
            }
        }

        return Kleene.Of(assumed, strict, (tally.IsPending || tally.BeginsEarlier) && assumed == Truth.Unknown);
    }

    private Truth Strict(int animal, int day, Truth assumed, in Tally tally, in WindowSet.Reading reading, ref int until)
    {
        if (day <= Days.KnownDay || assumed == Truth.Unknown)
        {
            return assumed;
        }

        if (!reading.IsStrictlyKnown)
        {
            return Truth.Unknown;
        }

        return tally.IsStrictlyCertain || (!tally.BeginsEarlier && _limits.IsOneSided(0))
            ? _limits.Accept(tally.StrictLeast, tally.IsCovered && tally.IsStrictlyCovered ? tally.Most : double.PositiveInfinity)
            : ForEveryAnchor(animal, day, strict: true, reading, ref until);
    }

    /// <summary>Counts events; each stands once a day. Returns the day of the first in the window, or int.MaxValue.</summary>
    private int CountEvents(int animal, int kind, in Bounds bounds, ref Tally tally, Notes? notes)
    {
        var run = Days.Herd.Runs[kind];
        var runDays = run.Days;
        var start = run.Starts[animal];
        var first = int.MaxValue;
        for (var i = Runs.LastAtMost(run, animal, bounds.High); i >= start && runDays[i] >= bounds.Low; i--)
        {
            Days.Steps?.Take();
            first = runDays[i];
            tally.Most++;
            tally.Least += first >= bounds.Latest ? 1 : 0;
            tally.StrictLeast += first >= bounds.StrictLatest ? 1 : 0;
            notes?.Entry(kind, i);
        }

        return first;
    }

    /// <summary>Counts days with an answer, each answer once a day. A result that is not known may be any one answer: it counts
    /// only where doubt does.</summary>
    private int CountAnswers(int animal, int kind, byte[] answers, in Bounds bounds, ref Tally tally, Notes? notes)
    {
        var run = Days.Herd.Runs[kind];
        var start = run.Starts[animal];
        var first = int.MaxValue;
        var i = Runs.LastAtMost(run, animal, bounds.High);
        while (i >= start && run.Days[i] >= bounds.Low)
        {
            Days.Steps?.Take();
            first = run.Days[i];
            var latest = i;
            var notKnown = 0;
            for (; i >= start && run.Days[i] == first; i--)
            {
                notKnown += run.Answers[i] == KindRun.NotKnown ? 1 : 0;
                if (run.Answers[i] == KindRun.NotKnown || Array.IndexOf(answers, run.Answers[i]) >= 0)
                {
                    notes?.Entry(kind, i);
                }
            }

            var found = 0;
            foreach (var answer in answers)
            {
                found += Array.IndexOf(run.Answers, answer, i + 1, latest - i) >= 0 ? 1 : 0;
            }

            var perhaps = Math.Min(notKnown, answers.Length - found);
            tally.Most += found + perhaps;
            tally.Least += first >= bounds.Latest ? found : 0;
            tally.StrictLeast += first >= bounds.StrictLatest ? found : 0;
            if (perhaps > 0)
            {
                tally.IsPending = true;
                for (var place = i + 1; notes is not null && place <= latest; place++)
                {
                    if (run.Answers[place] == KindRun.NotKnown)
                    {
                        notes.Pending(kind, place);
                    }
                }
            }
        }

        return first;
    }

    /// <summary>Results of her mob or the herd may be hers, each as any one of her own: they may add the answers that a day of hers does not have.</summary>
    private void CountPerhapsHers(GroupSamples group, int animal, int kind, byte[] answers, in Bounds bounds, ref Tally tally, Notes? notes)
    {
        var run = Days.Herd.Runs[kind];
        var place = group.Last(animal, bounds.Low, bounds.High);
        while (place >= 0)
        {
            var day = group.DayOf(place);
            var (open, found, both) = (0, 0, new bool[answers.Length]);
            for (var i = Runs.LastAtMost(run, animal, day); i >= run.Starts[animal] && run.Days[i] == day; i--)
            {
                open += run.Answers[i] == KindRun.NotKnown ? 1 : 0;
                if (Array.IndexOf(answers, run.Answers[i]) is var own and >= 0 && !both[own])
                {
                    both[own] = true;
                    found++;
                }
            }

            var before = Math.Min(answers.Length, found + open);
            for (; place >= 0 && group.DayOf(place) == day; place = group.Last(animal, bounds.Low, bounds.High, place))
            {
                var answer = group.AnswerOf(place);
                open += answer == KindRun.NotKnown ? 1 : 0;
                if (Array.IndexOf(answers, answer) is var perhaps and >= 0 && !both[perhaps])
                {
                    both[perhaps] = true;
                    found++;
                }

                if (answer == KindRun.NotKnown || Array.IndexOf(answers, answer) >= 0)
                {
                    notes?.Row(kind, day, group.LineOf(place), answer == KindRun.NotKnown ? null : (Days.Herd.Vocabulary.Kinds[kind] as TestKind)?.Answers[answer]);
                }
            }

            var more = Math.Min(answers.Length, found + open) - before;
            tally.Most += more;
            tally.IsPending |= more > 0;
        }
    }

    /// <summary>For a single window that ends on the day of judging: until the next event, until the first in the
    /// window drops out of it, until coverage changes at either end.</summary>
    private void LimitByOnly(WindowReader only, int animal, int day, int kind, in Bounds bounds, int first, ref int until)
    {
        var run = Days.Herd.Runs[kind];
        var next = Runs.LastAtMost(run, animal, day) + 1;
        if (next < run.Starts[animal + 1])
        {
            until = Math.Min(until, run.Days[next] - 1);
        }

        until = Math.Min(until, Days.NextCoverageEdge(animal, kind, day) - 1);
        if (only.LowMoves is { } low)
        {
            var edge = Days.NextCoverageEdge(animal, kind, bounds.Low) - 1;
            var leaves = Math.Min(first, edge);
            if (leaves < int.MaxValue - 1)
            {
                until = Math.Min(until, low.After(leaves));
            }
        }
        else if (bounds.StrictLatest >= day)
        {
            // The anchor may be as late as the day of judging, and moves along with it past today's events.
            until = Math.Min(until, Days.NextEdge(animal, kind, day) - 1);
        }
    }

    /// <summary>An exact number neither only grows nor only shrinks with the window, so the days on which the
    /// anchor may have been are tried in turn, of those that nothing tells apart one.</summary>
    private Truth ForEveryAnchor(int animal, int day, bool strict, in WindowSet.Reading reading, ref int until)
    {
        until = day;
        Truth? together = null;
        foreach (var possible in windows.Possible(animal, day, strict, reading, new WithGroupDays<KindsEdges>(new KindsEdges(Days, animal, _kinds), _groups)))
        {
            Days.Steps?.Take();
            var tally = new Tally();
            var isCovered = true;
            for (var i = 0; i < _counted.Length; i++)
            {
                var (kind, answers) = _counted[i];
                var bounds = windows.For(kind, possible);
                _ = answers.Length == 0
                    ? CountEvents(animal, kind, bounds, ref tally, null)
                    : CountAnswers(animal, kind, answers, bounds, ref tally, null);
                if (_groups[i] is { } group)
                {
                    CountPerhapsHers(group, animal, kind, answers, bounds, ref tally, null);
                }

                isCovered &= Days.Covers(animal, kind, bounds.Low, bounds.High)
                    && !(strict && bounds.High >= bounds.Low && Days.IsOpen(animal, kind, bounds.High));
            }

            var truth = _limits.Accept(tally.Least, isCovered ? tally.Most : double.PositiveInfinity);
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
            return new Remedy(_counted[0].Answers.Length == 0 ? RemedyKind.NewEvent : RemedyKind.NewResult, [.. names]);
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
                case FromAfterSpell after:
                    return new Remedy(RemedyKind.NewEvent, [after.Spell.Until.Name]);
                case FromAfterLast after:
                    return new Remedy(RemedyKind.NewEvent, [.. after.Kinds.Select(kind => kind.Name)]);
            }
        }

        return new Remedy(RemedyKind.ForGood, [.. names]);
    }

    /// <summary>What was counted, over all kinds.</summary>
    private struct Tally
    {
        /// <summary>How many there are, wherever her anchor may have been.</summary>
        public int Least;

        /// <summary>The same with coverage stopping at the known day.</summary>
        public int StrictLeast;

        /// <summary>How many there may be, of those on record.</summary>
        public int Most;

        public bool IsCovered;
        public bool IsStrictlyCovered;
        public bool IsCertain;
        public bool IsStrictlyCertain;

        /// <summary>With coverage stopping at the known day, a window may begin earlier.</summary>
        public bool BeginsEarlier;

        public bool IsPending;
    }
}
