namespace Byrelaw.Judging.Comparing;

/// <summary>Judges one farm's records by two rulebooks and finds which changes make which difference.</summary>
public static class HerdComparer
{
    /// <summary>Compares. Where only one rulebook has a programme (or says what the records are complete for), the other borrows it.</summary>
    /// <param name="between">The two rulebooks; at least one has a programme.</param>
    /// <param name="read">Reads the records with a rulebook's words and by what it says of them.</param>
    /// <param name="judged">Told each time the herd has been judged once more.</param>
    /// <param name="knownOn">The day whose knowledge the rules and records are; null for today's. It is only passed on.</param>
    /// <exception cref="ArgumentException">Neither has a programme.</exception>
    public static HerdComparison Compare(RulebookComparison between, Func<Rulebook, Herd> read, Action? judged = null, LocalDate? knownOn = null)
    {
        ArgumentNullException.ThrowIfNull(between);
        ArgumentNullException.ThrowIfNull(read);
        var changes = Change.Of(between);
        var old = Draft(Borrows(between.Old, between.New) ? between.Mix([]) : between.Old, read, knownOn);
        var @new = Draft(Borrows(between.New, between.Old) ? between.Mix(between.Differences) : between.New, read, knownOn);
        var trials = new Trials(between, changes, old, @new, read, judged ?? (() => { }));
        var finder = new CauseFinder(trials, changes);
        var groups = Differing(between, old, @new)
            .Select(animal => (Animal: animal, Cause: finder.Find((animal.List, animal.Number))))
            .GroupBy(one => Key(one.Cause, changes))
            .OrderBy(group => group.Key, StringComparer.Ordinal)
            .Select(group => new CauseGroup(group.First().Cause, [.. group.Select(one => one.Animal)]));
        return new HerdComparison(old, @new, [.. groups]);
    }

    /// <summary>Every animal of which something differs, by list and in the order of the lists.</summary>
    private static IEnumerable<AnimalDifference> Differing(RulebookComparison between, Draft old, Draft @new)
    {
        var before = ByWho(old);
        var now = ByWho(@new);
        return now.Keys.Concat(before.Keys.Where(who => !now.ContainsKey(who)))
            .Select(who => new AnimalDifference(who.List, who.Number, before.GetValueOrDefault(who), now.GetValueOrDefault(who)))
            .Where(animal => ToldOf(animal.Old, between.NameNow) != ToldOf(animal.New, name => name));

        static Told? ToldOf(AnimalJudgement? judgement, Func<string, string> nameNow) => judgement is null ? null : Told.Of(judgement, nameNow);
    }

    private static Dictionary<(string List, string Number), AnimalJudgement> ByWho(Draft draft) =>
        draft.Lists.SelectMany(list => list.Animals.Select(animal => (list.Choice.List, animal))).ToDictionary(one => (one.List, one.animal.Number), one => one.animal);

    private static Draft Draft(Rulebook rulebook, Func<Rulebook, Herd> read, LocalDate? knownOn) => new Judge(rulebook, read(rulebook), knownOn).JudgeAll();

    /// <summary>Whether a rulebook has to borrow the other's programme or record keeping.</summary>
    private static bool Borrows(Rulebook rulebook, Rulebook other) => rulebook.Programme is null || (rulebook.Records is null && other.Records is not null);

    private static string Key(Cause cause, ImmutableArray<Change> changes) =>
        $"{Places(cause.Changes, changes)} {string.Concat(cause.Alone.Select(alone => alone ? '1' : '0'))} {Places(cause.Instead, changes)}";

    private static string Places(ImmutableArray<Change> some, ImmutableArray<Change> all) => string.Join(',', some.Select(change => $"{all.IndexOf(change):D4}"));
}
