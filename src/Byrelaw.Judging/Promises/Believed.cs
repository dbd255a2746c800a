namespace Byrelaw.Judging.Promises;

/// <summary>
/// Holds a farm's promises against its own records. What the records do not bear out is not believed: the promise counts as
/// not written, and nothing but "not known" comes of it.
/// </summary>
public static class Believed
{
    // One entry before a promise may be a slip.
    private const int FewestFailing = 2;

    /// <summary>The same herd with the promises that count, and what is doubted.</summary>
    /// <param name="rulebook">With what its files expect of true records, and whom they waive.</param>
    /// <param name="herd">As read, with the promises as written.</param>
    /// <param name="unless">Which doubts do not stand, for what would be without them; null for none.</param>
    public static Herd Of(Rulebook rulebook, Herd herd, Predicate<Doubted>? unless = null)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        ArgumentNullException.ThrowIfNull(herd);
        var doubts = new List<Doubted>(herd.Doubted);
        var fallen = new HashSet<int>();
        var reach = (int[])herd.Coverage.Reach.Clone();
        var holes = new List<Hole>(herd.Coverage.Holes);

        // How far a kind reaches is found first; then all expectations are tried on what is promised, and all take effect at once.
        foreach (var kind in Promised(herd, herd.Vocabulary.Kinds))
        {
            if (SilenceTrial.Find(herd, kind.Id) is { } silence)
            {
                var silent = new FallenSilent(kind, silence.From, silence.To, silence.Strays);
                if (!Without(silent))
                {
                    reach[kind.Id] = silence.From - 1;
                    holes.Add(new Hole(-1, kind.Id, silence.From, silence.To, IsDoubt: true));
                    doubts.Add(silent);
                }
            }
        }

        var tried = holes.Count == herd.Coverage.Holes.Length ? herd : herd.With(herd.Coverage.With(herd.Coverage.Since, reach, holes), herd.Doubted);
        foreach (var expectation in rulebook.Expectations)
        {
            var (falling, uncovered) = (new HashSet<int>(), new List<Hole>());
            foreach (var doubt in Try(rulebook, tried, expectation, falling, uncovered))
            {
                if (!Without(doubt))
                {
                    doubts.Add(doubt);
                    fallen.UnionWith(falling);
                    holes.AddRange(uncovered);
                }

                falling.Clear();
                uncovered.Clear();
            }
        }

        foreach (var (expectation, isMeant) in FathersExpected.Of(rulebook, tried))
        {
            var atStake = Promised(tried, expectation.Else);
            var trial = atStake.IsEmpty ? null : EntryTrial.OnPromises(tried, expectation, Waived(rulebook, tried, expectation), isMeant);
            if (trial is { Fails: true } && new ExpectationFails(expectation, trial.Counts, [.. trial.Failing], trial.Waived, atStake) is var fails && !Without(fails))
            {
                doubts.Add(fails);
                Fall(atStake, fallen);
            }
            else if (trial is { Fails: false, Failing.Count: > 0 } && new ExpectationStrained(expectation, trial.Counts, [.. trial.Failing], trial.Waived) is var strained && !Without(strained))
            {
                doubts.Add(strained);
            }
        }

        var contradicted = new HashSet<int>();
        foreach (var doubt in NoneOnFarm.Contradicted(rulebook, herd, contradicted))
        {
            if (!Without(doubt))
            {
                doubts.Add(doubt);
                fallen.UnionWith(contradicted);
            }

            contradicted.Clear();
        }

        foreach (var overlooked in Overlooked.Find(rulebook, herd))
        {
            if (!Without(overlooked))
            {
                fallen.Add(overlooked.Fallen.Id);
                doubts.Add(overlooked);
            }
        }

        if (WordsOnRecord.NotRead(rulebook, herd, doubts.OfType<MayBeOverlooked>().Select(one => NameFolding.Fold(one.Hint.Word)).ToHashSet()) is { } notRead && !Without(notRead))
        {
            doubts.Add(notRead);
        }

        if (herd.Count > 0 && IsEmpty(herd) && Promised(herd, herd.Vocabulary.Kinds) is { IsEmpty: false } promised && !Without(new EmptyBook(promised)))
        {
            Fall(promised, fallen);
            doubts.Add(new EmptyBook(promised));
        }

        if (!herd.FilesNotRead.IsEmpty && Promised(herd, herd.Vocabulary.Kinds) is { IsEmpty: false } inAll && new FilesNotRead(herd.FilesNotRead, inAll) is var beside && !Without(beside))
        {
            Fall(inAll, fallen);
            doubts.Add(beside);
        }

        var bought = BoughtWithoutDay.Find(herd);
        if (bought.Count > 0 && unless is not null && BoughtWithoutDay.Doubts(herd, bought).Any(doubt => unless(doubt)))
        {
            bought.Clear();
        }

        if (bought.Count > 0)
        {
            doubts.AddRange(BoughtWithoutDay.Doubts(herd, bought));
        }

        var inCalf = InCalfWhenTheyCame.Find(herd);
        if (inCalf.Count > 0 && !Without(InCalfWhenTheyCame.Doubt(inCalf)))
        {
            doubts.Add(InCalfWhenTheyCame.Doubt(inCalf));
            holes.AddRange(InCalfWhenTheyCame.Holes(herd, inCalf));
        }

        var parities = ParityDoubts.Find(herd);
        if (unless is not null && ParityDoubts.Doubts(herd, parities).Any(doubt => unless(doubt)))
        {
            parities.Clear();
        }

        doubts.AddRange(ParityDoubts.Doubts(herd, parities));
        holes.AddRange(ParityDoubts.Holes(herd, parities));
        if (doubts.Count == 0)
        {
            return herd;
        }

        FollowGiven(herd.Vocabulary, reach, holes, fallen);
        var (since, setAside) = ((int[])herd.Coverage.Since.Clone(), Array.ConvertAll(herd.Coverage.Since, _ => Day.End));
        foreach (var kind in fallen)
        {
            (since[kind], setAside[kind]) = (Day.End, since[kind]);
        }

        var joined = (int[])herd.Coverage.Joined.Clone();
        bought.ForEach(animal => joined[animal] = Day.End);
        return herd.With(herd.Coverage.With(since, reach, holes, joined, setAside), ParityDoubts.Marks(herd, parities)).With(doubts);

        bool Without(Doubted doubt) => unless is not null && unless(doubt);
    }

    private static IEnumerable<Doubted> Try(Rulebook rulebook, Herd herd, RecordExpectation expectation, HashSet<int> fallen, List<Hole> holes)
    {
        // One that does not say whose promises are at stake may have been about any.
        var promised = Promised(herd, expectation is { IsBroken: true, Else.IsEmpty: true } ? herd.Vocabulary.Kinds : expectation.Else);
        switch (expectation)
        {
            case { IsBroken: true } when !promised.IsEmpty:
                Fall(promised, fallen);
                yield return new ExpectationUnreadable(expectation, promised);
                break;
            case RateExpectation rate when !promised.IsEmpty && herd.Coverage.Since[rate.Kind.Id] < Day.End:
                var (found, cowYears) = RateTrial.Count(herd, rate);
                if (RateTrial.Fails(rate, found, cowYears))
                {
                    Fall(promised, fallen);
                    yield return new TooFewEntries(rate, found, cowYears, promised);
                }

                break;
            case EntryExpectation { IsBroken: false, ForHer: true } entries:
                var ofHers = EntryTrial.OnPromises(herd, entries, Waived(rulebook, herd, entries)).Failing;
                if (ofHers.Count > 0)
                {
                    holes.AddRange(ofHers.SelectMany(entry => entries.Else.Select(kind => new Hole(entry.Animal, kind.Id, entry.Day, NextOf(herd, entries, entry) - 1, IsDoubt: true))));
                    yield return new Contradictions(entries, [.. ofHers]);
                }

                break;
            case EntryExpectation { IsBroken: false } entries when !promised.IsEmpty:
                foreach (var doubt in TryForAll(rulebook, herd, entries, promised, fallen))
                {
                    yield return doubt;
                }

                break;
            default:
                break;
        }
    }

    private static IEnumerable<Doubted> TryForAll(Rulebook rulebook, Herd herd, EntryExpectation expectation, ImmutableArray<Kind> promised, HashSet<int> fallen)
    {
        var waived = Waived(rulebook, herd, expectation);
        var trial = EntryTrial.OnPromises(herd, expectation, waived);
        if (trial.Fails)
        {
            Fall(promised, fallen);
            yield return new ExpectationFails(expectation, trial.Counts, [.. trial.Failing], trial.Waived, promised);
            yield break;
        }

        if (trial.Failing.Count > 0 || trial.Waived > 0)
        {
            yield return new ExpectationStrained(expectation, trial.Counts, [.. trial.Failing], trial.Waived);
        }

        foreach (var (since, kinds) in BegunWithoutReason(rulebook, promised, expectation))
        {
            var before = EntryTrial.Before(herd, expectation, waived, since);
            if (before is { Fails: true, Failing.Count: >= FewestFailing })
            {
                Fall(kinds, fallen);
                yield return new BegunAfterTrouble(expectation, before.Counts, before.Failing.Count, kinds);
            }
        }
    }

    /// <summary>Promises that nobody gave a reason for and agreed to, by the day they begin. That some kinds do not exist on the farm needs none, as long as others need not be on record:
    /// where none of them exists, by whatever lines, what was before the last of these is looked at.</summary>
    private static IEnumerable<(int Since, ImmutableArray<Kind> Kinds)> BegunWithoutReason(Rulebook rulebook, ImmutableArray<Kind> promised, EntryExpectation expectation)
    {
        var without = (rulebook.Records?.Complete ?? []).Where(promise => (promise.Because is null || promise.Agreement is null) && promise.Kinds.Any(promised.Contains)).ToList();
        foreach (var sameDay in without.GroupBy(promise => promise.Since).Where(sameDay => sameDay.Any(promise => !promise.IsNone)))
        {
            yield return (Day.Number(sameDay.Key), KindsOf(sameDay));
        }

        var none = without.FindAll(promise => promise.IsNone);
        if (none.Count > 0 && KindsOf(none) is var kinds && expectation.Else.All(kinds.Contains))
        {
            yield return (Day.Number(none.Max(promise => promise.Since)), kinds);
        }

        ImmutableArray<Kind> KindsOf(IEnumerable<Completeness> promises) => [.. promises.SelectMany(promise => promise.Kinds).Where(promised.Contains).Distinct()];
    }

    /// <summary>Whether nothing at all is on record of anybody.</summary>
    private static bool IsEmpty(Herd herd) =>
        Array.TrueForAll(herd.Runs, run => run.Days.Length == 0) && Array.TrueForAll(herd.MobRuns, run => run is not { Days.Length: > 0 })
        && Array.TrueForAll(herd.GroupRuns, run => run is null) && herd.MobRows.Spells.Length == 0 && herd.MobRows.Moves.Length == 0;

    private static HashSet<int> Waived(Rulebook rulebook, Herd herd, EntryExpectation expectation) =>
        [.. rulebook.ExpectationWaivers
            .Where(waiver => waiver.Expectation == expectation.Name && !(waiver.Until < herd.KnownDay))
            .Select(waiver => herd.Find(waiver.Animal)).Where(animal => animal >= 0)];

    private static ImmutableArray<Kind> Promised(Herd herd, ImmutableArray<Kind> kinds) => [.. kinds.Where(kind => herd.Coverage.Since[kind.Id] < Day.End && kind.Id != herd.Vocabulary.TimedHeat?.Timed.Id)];

    /// <summary>A timed heat is known where what was given is, and no promise of its own is held against the records.</summary>
    private static void FollowGiven(Vocabulary vocabulary, int[] reach, List<Hole> holes, HashSet<int> fallen)
    {
        if (vocabulary.TimedHeat is not { Timed.Id: var timed, Given.Id: var given })
        {
            return;
        }

        reach[timed] = reach[given];
        holes.RemoveAll(hole => hole.Kind == timed);
        holes.AddRange(holes.Where(hole => hole.Kind == given).Select(hole => hole with { Kind = timed }).ToList());
        if (fallen.Contains(given))
        {
            fallen.Add(timed);
        }
    }

    private static void Fall(ImmutableArray<Kind> kinds, HashSet<int> fallen) => fallen.UnionWith(kinds.Select(kind => kind.Id));

    /// <summary>The day of her next entry of the same sort, or of one that would have done: from it on she is known again. After every
    /// day where there is none.</summary>
    private static int NextOf(Herd herd, EntryExpectation expectation, Unexpected entry)
    {
        var (next, records) = (Day.End + 1, new EntriesOnRecord(herd));
        foreach (var what in expectation.Others.Add(expectation.Every))
        {
            foreach (var (day, _) in records.Of(what, entry.Animal))
            {
                next = day > entry.Day ? Math.Min(next, day) : next;
            }
        }

        return next;
    }
}
