namespace Byrelaw.Judging.Promises;

/// <summary>
/// Tries an expectation about single entries on a herd. An entry counts where the kinds whose promises are at stake are
/// promised over the days looked at; it fails where nothing that will do is on record there.
/// </summary>
/// <param name="herd">What is on record.</param>
/// <param name="expectation">What is tried.</param>
/// <param name="waived">Animals whose entries a person waived.</param>
/// <param name="isMeant">Which lines are meant, where not all entries of the kind are tried; then rows of no known kind count for nothing, for another expectation counts them.</param>
internal sealed class EntryTrial(Herd herd, EntryExpectation expectation, IReadOnlySet<int> waived, Predicate<int>? isMeant = null)
{
    // What was not written down longer ago says little of today.
    private const int YearsBack = 5;

    private readonly EntriesOnRecord _records = new(herd);
    private readonly Coverage _coverage = herd.Coverage;
    private readonly PregnancyEnds? _ends = expectation.IsOfOnePregnancy ? new PregnancyEnds(herd) : null;
    private readonly List<Unexpected> _failing = [];

    /// <summary>How many entries count, those that a person waived left out.</summary>
    public int Counts { get; private set; }

    /// <summary>How many of the entries a person waived.</summary>
    public int Waived { get; private set; }

    /// <summary>How many of all entries a person waived that would have counted, and failed.</summary>
    public List<Unexpected> FailingWaived { get; } = [];

    /// <summary>Those that fail, by animal and day.</summary>
    public IReadOnlyList<Unexpected> Failing => _failing;

    /// <summary>Whether so many fail that the promises fall. Where more than that share, and more than one, is waived, all entries count.</summary>
    public bool Fails
    {
        get
        {
            var all = Counts + Waived;
            var isTooManyWaived = Waived > 1 && Waived * 100.0 > expectation.OverPercent * all;
            return isTooManyWaived
                ? (_failing.Count + FailingWaived.Count) * 100.0 > expectation.OverPercent * all
                : _failing.Count * 100.0 > expectation.OverPercent * Counts;
        }
    }

    /// <summary>Tries every entry on record, on the promises as written.</summary>
    public static EntryTrial OnPromises(Herd herd, EntryExpectation expectation, IReadOnlySet<int> waived, Predicate<int>? isMeant = null)
    {
        var trial = new EntryTrial(herd, expectation, waived, isMeant);
        trial.TryAll((animal, from, to, fails) => trial.IsPromised(animal, from, to, fails));
        trial.CountUnreadable();
        return trial;
    }

    /// <summary>Tries the entries whose days lie before a promise begins, back to where the farm wrote such things down at all.</summary>
    public static EntryTrial Before(Herd herd, EntryExpectation expectation, IReadOnlySet<int> waived, int since)
    {
        var trial = new EntryTrial(herd, expectation, waived);
        var first = Math.Max(trial.FirstOfOthers(), Day.Number(Day.Date(since).PlusYears(-YearsBack)));
        var members = herd.Membership;
        trial.TryAll((animal, from, to, fails) => to < since && from >= first && (fails
            ? from >= members.JoinedOnRecord[animal] && to <= members.LeftOnRecord[animal]
            : from >= trial._coverage.Joined[animal] && to <= trial._coverage.Left[animal]));
        return trial;
    }

    private void TryAll(Func<int, int, int, bool, bool> counts)
    {
        for (var animal = 0; animal < herd.Count; animal++)
        {
            foreach (var (day, line) in _records.Of(expectation.Every, animal))
            {
                if (isMeant?.Invoke(line) == false)
                {
                    continue;
                }

                var (from, to) = DaysFor(animal, day);
                var fails = !HasOther(animal, from, to);
                if (counts(animal, from, to, fails) && (!expectation.IsBefore || IsOver(animal, day, to)))
                {
                    Count(animal, new Unexpected(animal, day, line, IsUnreadable: false) { ButFor = fails ? ButFor(animal, day, to) : 0 }, fails);
                }
            }
        }
    }

    private void Count(int animal, Unexpected entry, bool fails)
    {
        if (animal >= 0 && waived.Contains(animal))
        {
            Waived++;
            if (fails)
            {
                FailingWaived.Add(entry);
            }

            return;
        }

        Counts++;
        if (fails)
        {
            _failing.Add(entry);
        }
    }

    /// <summary>What cannot be read counts against the promise: a row that may be an entry that fails is one.</summary>
    private void CountUnreadable()
    {
        if (expectation.ForHer || !expectation.Else.Any(kind => _coverage.Since[kind.Id] < Day.End))
        {
            return;
        }

        foreach (var gap in _records.MayBe(expectation.Every.Kind, ofAny: isMeant is null).Where(gap => !gap.IsHint && isMeant?.Invoke(gap.Line) != false && MayFail(gap)))
        {
            Count(gap.Animal, new Unexpected(gap.Animal, gap.From, gap.Line, IsUnreadable: !gap.IsTooNear), fails: true);
        }

        foreach (var (animal, day, line) in _records.WithoutAnswer(expectation.Every))
        {
            if (MayFailOn(animal, day))
            {
                Count(animal, new Unexpected(animal, day, line, IsUnreadable: true), fails: true);
            }
        }
    }

    /// <summary>
    /// Whether a row may be an entry that fails: on any one of the days that it may be of. One of an animal or a day that cannot be read may; one of no known kind,
    /// or one that is hard to believe, only of a female that is old enough.
    /// </summary>
    private bool MayFail(Gap gap)
    {
        if (gap.Animal < 0 || gap.From <= Day.Start || gap.To >= Day.End)
        {
            return true;
        }

        var isSure = gap.Kind >= 0 && !gap.IsTooNear;
        if (!isSure && (herd.Sexes[gap.Animal] is Sex.Male or Sex.Steer || gap.To < _coverage.NeededFrom[expectation.Every.Kind.Id][gap.Animal]))
        {
            return false;
        }

        for (var day = gap.From; day <= gap.To; day++)
        {
            if (MayFailOn(gap.Animal, day))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether an entry of hers on this day would fail: nothing that would do is on record, and a promise had begun by then.</summary>
    private bool MayFailOn(int animal, int day)
    {
        var (from, to) = DaysFor(animal, day);
        return !HasOther(animal, from, to) && AtStake(from, kind => HadBegun(kind, animal, from, to));
    }

    /// <summary>Whether the promise of a kind had begun, for her, on the first of these days. What takes days out of the promise later on takes none out here: a row that
    /// cannot be read may be why they are out.</summary>
    private bool HadBegun(Kind kind, int animal, int from, int to)
    {
        var needed = _coverage.NeededFrom[kind.Id][animal];
        return _coverage.Since[kind.Id] < Day.End && (to < needed || Math.Max(from, needed) >= Math.Max(_coverage.Since[kind.Id], herd.Membership.JoinedOnRecord[animal]));
    }

    /// <summary>The days on which another entry is looked for: of a pregnancy, those on which it may have begun.</summary>
    private (int From, int To) DaysFor(int animal, int day)
    {
        if (expectation.IsBefore)
        {
            return (expectation.From.After(day), expectation.To.After(day));
        }

        var (from, to) = (expectation.To.FirstBefore(day), expectation.From.LastBefore(day));
        return (Math.Max(from, _ends?.Begins(animal, to, day).First ?? from), to);
    }

    /// <summary>As <see cref="Unexpected.ButFor"/>.</summary>
    private int ButFor(int animal, int day, int to) => _ends?.Begins(animal, to, day) is { Line: not 0 } begins
        && HasOther(animal, Math.Max(expectation.To.FirstBefore(day), begins.ByWhatCanBeRead), to) ? begins.Line : 0;

    private bool HasOther(int animal, int from, int to)
    {
        foreach (var other in expectation.Others)
        {
            if (_records.Any(other, animal, from, to))
            {
                return true;
            }
        }

        foreach (var spell in expectation.Spells)
        {
            if (_records.Any(spell, animal, from, to))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>
    /// Whether a kind at stake is promised over these days. For an entry that fails, rows that cannot be read are no hole, whatever they
    /// may say: else a herd in which more is smudged would be believed sooner. For one that does not fail they are, for it must not
    /// make the share of the others small.
    /// </summary>
    private bool IsPromised(int animal, int from, int to, bool fails)
    {
        var members = herd.Membership;
        return AtStake(from, kind => _coverage.Since[kind.Id] < Day.End && (fails
            ? _coverage.IsKept(animal, kind.Id, from, to, strict: true, members.JoinedOnRecord[animal], members.LeftOnRecord[animal])
            : _coverage.IsKept(animal, kind.Id, from, to, strict: true) && !_coverage.AnyGapOf(animal, kind.Id, from, to)));
    }

    /// <summary>
    /// Whether a promise says what ought to stand there: that a kind is written down. That a kind does not exist on the farm says so only together with all others: a calf without a father
    /// speaks of no embryo where services need not be on record. A kind that ceased to exist was written down on the days before.
    /// </summary>
    private bool AtStake(int from, Predicate<Kind> isPromised)
    {
        var areAll = true;
        foreach (var kind in expectation.Else)
        {
            if (!isPromised(kind))
            {
                areAll = false;
            }
            else if (expectation.Others.IsEmpty || _coverage.NoneOf(kind.Id) > from)
            {
                return true;
            }
        }

        return areAll;
    }

    /// <summary>Whether what comes later could have been written down by now, of an animal that was still here.</summary>
    private bool IsOver(int animal, int day, int to)
    {
        foreach (var other in expectation.Others)
        {
            if (_coverage.Reach[other.Kind.Id] <= to)
            {
                return false;
            }
        }

        foreach (var spell in expectation.Spells)
        {
            if (_coverage.Reach[spell.From.Id] <= to)
            {
                return false;
            }
        }

        var members = herd.Membership;
        return members.At(animal, day) == Presence.In && members.StretchAt(animal, day) == members.StretchAt(animal, to);
    }

    private int FirstOfOthers()
    {
        var first = Day.End;
        foreach (var kind in expectation.Others.Select(other => other.Kind).Concat(expectation.Spells.Select(spell => (Kind)spell.From)))
        {
            foreach (var day in herd.Runs[kind.Id].Days)
            {
                first = Math.Min(first, day);
            }
        }

        return first;
    }
}
