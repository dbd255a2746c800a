namespace Byrelaw.Judging.Criteria;

/// <summary>Counts the entries of one kind that lie in a window: events, or results with some answers.</summary>
/// <param name="days">The herd.</param>
/// <param name="kind">Of which kind.</param>
/// <param name="answers">The answers that count, each once a day; none for an event.</param>
internal sealed class EntryCounter(HerdDays days, int kind, byte[] answers)
{
    /// <summary>One for each kind that is counted.</summary>
    public static EntryCounter[] Of(HerdDays days, ImmutableArray<Counted> counted) => [.. Kinds(counted).Select(kind => new EntryCounter(days, kind.Kind, kind.Answers))];

    /// <summary>Each kind that is counted, with the answers that count; none for an event.</summary>
    public static IEnumerable<(int Kind, byte[] Answers)> Kinds(ImmutableArray<Counted> counted) =>
        counted.GroupBy(one => one.Kind.Id).Select(kind => (kind.Key, kind.Where(one => one.Answer >= 0).Select(one => (byte)one.Answer).Distinct().ToArray()));

    /// <summary>The kind's id.</summary>
    public int Kind => kind;

    /// <summary>Whether results are counted, of which one may be awaited.</summary>
    public bool IsOfAnswers => answers.Length > 0;

    /// <summary>Results of mobs and the herd that may be hers; null for none.</summary>
    public GroupSamples? Groups { get; } = answers.Length == 0 ? null : GroupSamples.Of(days, kind);

    /// <summary>Counts those of an animal. Returns the day of her first in the window, or int.MaxValue.</summary>
    public int Count(int animal, in Bounds bounds, ref EntryTally tally, Notes? notes)
    {
        var first = answers.Length == 0 ? Events(animal, bounds, ref tally, notes) : Answers(animal, bounds, ref tally, notes);
        if (Groups is not null)
        {
            PerhapsHers(Groups, animal, bounds, ref tally, notes);
        }

        return first;
    }

    /// <summary>The days in a window with anything to count, from the last to the first.</summary>
    public IEnumerable<int> DaysIn(int animal, int low, int high)
    {
        var run = days.Herd.Runs[kind];
        var own = Runs.LastAtMost(run, animal, high);
        var group = Groups?.Last(animal, low, high) ?? -1;
        while (true)
        {
            var ownDay = own >= run.Starts[animal] && run.Days[own] >= low ? run.Days[own] : int.MinValue;
            var day = Math.Max(ownDay, group >= 0 ? Groups!.DayOf(group) : int.MinValue);
            if (day == int.MinValue)
            {
                yield break;
            }

            yield return day;
            for (; own >= run.Starts[animal] && run.Days[own] == day; own--)
            {
            }

            for (; group >= 0 && Groups!.DayOf(group) == day; group = Groups.Last(animal, low, high, group))
            {
            }
        }
    }

    /// <summary>Adds the days in a window on which there surely is one, and those on which one is awaited, or may be hers.</summary>
    /// <param name="animal">Whose.</param>
    /// <param name="low">The first day.</param>
    /// <param name="high">The last.</param>
    /// <param name="sure">Where sure days go.</param>
    /// <param name="perhaps">Where the others go; null for nowhere.</param>
    public void Days(int animal, int low, int high, SortedSet<int> sure, SortedSet<int>? perhaps)
    {
        var run = days.Herd.Runs[kind];
        for (var i = Runs.LastAtMost(run, animal, high); i >= run.Starts[animal] && run.Days[i] >= low; i--)
        {
            days.Steps?.Take();
            if (answers.Length == 0 || Array.IndexOf(answers, run.Answers[i]) >= 0)
            {
                sure.Add(run.Days[i]);
            }
            else if (run.Answers[i] == KindRun.NotKnown)
            {
                perhaps?.Add(run.Days[i]);
            }
        }

        for (var place = perhaps is null ? -1 : Groups?.Last(animal, low, high) ?? -1; place >= 0; place = Groups!.Last(animal, low, high, place))
        {
            var answer = Groups!.AnswerOf(place);
            if (answer == KindRun.NotKnown || Array.IndexOf(answers, answer) >= 0)
            {
                perhaps!.Add(Groups.DayOf(place));
            }
        }
    }

    /// <summary>Counts events; each stands once a day. Returns the day of the first in the window, or int.MaxValue.</summary>
    private int Events(int animal, in Bounds bounds, ref EntryTally tally, Notes? notes)
    {
        var run = days.Herd.Runs[kind];
        var runDays = run.Days;
        var start = run.Starts[animal];
        var first = int.MaxValue;
        for (var i = Runs.LastAtMost(run, animal, bounds.High); i >= start && runDays[i] >= bounds.Low; i--)
        {
            days.Steps?.Take();
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
    private int Answers(int animal, in Bounds bounds, ref EntryTally tally, Notes? notes)
    {
        var run = days.Herd.Runs[kind];
        var start = run.Starts[animal];
        var first = int.MaxValue;
        var i = Runs.LastAtMost(run, animal, bounds.High);
        while (i >= start && run.Days[i] >= bounds.Low)
        {
            days.Steps?.Take();
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
    private void PerhapsHers(GroupSamples group, int animal, in Bounds bounds, ref EntryTally tally, Notes? notes)
    {
        var run = days.Herd.Runs[kind];
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
                    notes?.Row(kind, day, group.LineOf(place), answer == KindRun.NotKnown ? null : (days.Herd.Vocabulary.ById[kind] as TestKind)?.Answers[answer]);
                }
            }

            var more = Math.Min(answers.Length, found + open) - before;
            tally.Most += more;
            tally.IsPending |= more > 0;
        }
    }
}
