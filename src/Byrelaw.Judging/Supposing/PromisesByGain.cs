namespace Byrelaw.Judging.Supposing;

/// <summary>
/// Finds which promises would open most of a list, for a farm that has made few. Of each animal that is asked about, the kinds that nobody promises are
/// a set; the set that frees most animals for each of its kinds comes first, the next on top of it. Each step is judged as if it were promised.
/// Nothing is recommended: a promise is written because it is true.
/// </summary>
public static class PromisesByGain
{
    private const int MostSteps = 6;

    /// <summary>The steps of one list.</summary>
    /// <param name="farm">The farm.</param>
    /// <param name="rulebook">Its rules.</param>
    /// <param name="choice">The list.</param>
    public static PromiseGains Find(SupposedFarm farm, Rulebook rulebook, Choice choice)
    {
        ArgumentNullException.ThrowIfNull(farm);
        ArgumentNullException.ThrowIfNull(rulebook);
        var judge = farm.Judge(new Supposition());
        var (herd, today) = (judge.Herd, judge.JudgeList(choice));
        var lacking = Lacking(today, rulebook.Vocabulary);
        var since = Since(today, herd, rulebook.Vocabulary);
        var (chosen, steps) = (new HashSet<int>(), ImmutableArray.CreateBuilder<PromiseStep>());
        while (steps.Count < MostSteps && Best(lacking.Select(one => one.Kinds), chosen) is { Count: > 0 } next)
        {
            chosen.UnionWith(next);
            steps.Add(Step(farm, choice, rulebook.Vocabulary, [.. next.Order()], chosen, since, lacking.Count));
        }

        return new PromiseGains(choice, today.Animals.Length, lacking.Count, steps.ToImmutable());
    }

    /// <summary>Of each animal that is asked about, the kinds of which nobody promises that they are written down.</summary>
    private static List<(int Animal, HashSet<int> Kinds)> Lacking(ListJudgement list, Vocabulary vocabulary) =>
        [.. list.Animals.Where(animal => animal.Answer == Answer.Ask).Select(animal => (animal.Animal, Kinds(animal, vocabulary)))];

    private static HashSet<int> Kinds(AnimalJudgement animal, Vocabulary vocabulary) =>
        [.. animal.Settle.Where(IsUnpromised).Select(missing => vocabulary.FindKind(missing.Subject)).OfType<Kind>().Select(kind => kind.Declaration.Id)];

    private static bool IsUnpromised(Missing missing) => missing.Reason is MissingReason.NotKept or MissingReason.NeverRecorded;

    /// <summary>The kinds that free most animals for each kind that is new; null where no set frees anybody.</summary>
    private static HashSet<int>? Best(IEnumerable<HashSet<int>> sets, HashSet<int> chosen)
    {
        var open = sets.Select(set => set.Except(chosen).ToHashSet()).Where(set => set.Count > 0).ToList();
        HashSet<int>? best = null;
        var most = 0.0;
        foreach (var set in open.DistinctBy(set => string.Join(' ', set.Order())))
        {
            var gain = (double)open.Count(set.IsSupersetOf) / set.Count;
            if (gain > most)
            {
                (best, most) = (set, gain);
            }
        }

        return best;
    }

    /// <summary>For each kind the first day that any rule asks about; for one asked about without a first day, that of its first entry.</summary>
    private static Dictionary<int, LocalDate> Since(ListJudgement list, Herd herd, Vocabulary vocabulary)
    {
        var since = new Dictionary<int, LocalDate>();
        foreach (var missing in list.Animals.Where(animal => animal.Answer == Answer.Ask).SelectMany(animal => animal.Settle).Where(IsUnpromised))
        {
            if (vocabulary.FindKind(missing.Subject)?.Declaration is { } kind)
            {
                var days = herd.Runs[kind.Id].Days;
                var first = missing.From ?? (days.Length > 0 ? Day.Date(days.Min()) : herd.KnownDay);
                since[kind.Id] = since.TryGetValue(kind.Id, out var before) && before < first ? before : first;
            }
        }

        return since;
    }

    private static PromiseStep Step(SupposedFarm farm, Choice choice, Vocabulary vocabulary, ImmutableArray<int> next, HashSet<int> chosen, Dictionary<int, LocalDate> since, int asked)
    {
        var promises = new Supposition { Promises = [.. chosen.Select(kind => new Completeness([vocabulary.ById[kind]], since[kind], choice.Span))], Unless = _ => true };
        var judge = farm.Judge(promises);
        var then = judge.JudgeList(choice);
        var still = then.Animals.Count(animal => animal.Answer == Answer.Ask);
        var stillUnpromised = then.Animals.Count(animal => animal.Answer == Answer.Ask && animal.Settle.Any(IsUnpromised));
        ImmutableArray<Kind> kinds = [.. next.Select(kind => vocabulary.ById[kind])];
        var from = kinds.Min(kind => since[kind.Id]);
        var first = Day.Number(from);
        return new PromiseStep(
            kinds, from, asked - still, then.Count(Answer.Ready) + then.Count(Answer.OnCourse), asked - stillUnpromised,
            [.. farm.Herd(promises with { Unless = null }).Doubted.Where(doubt => Fallen(doubt).Any(kind => next.Contains(kind.Id)))],
            kinds.Sum(kind => judge.Herd.Runs[kind.Id].Days.Count(day => day >= first)));
    }

    /// <summary>The kinds whose promises a doubt takes away.</summary>
    private static ImmutableArray<Kind> Fallen(Doubted doubt) => doubt switch
    {
        ExpectationFails fails => fails.Fallen,
        TooFewEntries few => few.Fallen,
        ExpectationUnreadable unreadable => unreadable.Fallen,
        BegunAfterTrouble begun => begun.Fallen,
        EmptyBook book => book.Fallen,
        FilesNotRead files => files.Fallen,
        FallenSilent silent => [silent.Kind],
        NoneButOne none => [none.Kind],
        NothingToReach nothing => [nothing.Kind],
        MayBeOverlooked overlooked => [overlooked.Fallen],
        _ => [],
    };
}
