namespace Byrelaw.Planning.FindingOut;

/// <summary>
/// On which days a record that is asked for does it: supposed on that day, with all else that is asked of her as it was proved, she is sure. The day before a run of such
/// days and the day after it do not.
/// </summary>
internal sealed class UsefulDays(Prover prover, Gates gates, LocalDate today)
{
    /// <summary>The days of each record of each animal, from today on; none of what is mended or looked up.</summary>
    public Dictionary<int, ImmutableArray<ToFindOut>> Of(IReadOnlyDictionary<int, ProvedRecords> proofs)
    {
        var found = proofs.ToDictionary(one => one.Key, one => one.Value.Records.Select(record => new ToFindOut(record, [])).ToArray());
        var most = proofs.Values.Select(proof => proof.Records.Length).DefaultIfEmpty().Max();
        for (var place = 0; place < most; place++)
        {
            foreach (var (animal, days) in DaysOf(proofs.Where(one => place < one.Value.Records.Length && one.Value.Records[place].IsTaken).ToDictionary(), place))
            {
                found[animal][place] = found[animal][place] with { Days = days };
            }
        }

        return found.ToDictionary(one => one.Key, one => one.Value.ToImmutableArray());
    }

    /// <summary>All animals are tried at once, each with her next day.</summary>
    private IEnumerable<(int Animal, ImmutableArray<DateInterval> Days)> DaysOf(Dictionary<int, ProvedRecords> proofs, int place)
    {
        var searches = proofs.ToDictionary(one => one.Key, one => Search(one.Value.Records[place]));
        while (true)
        {
            var trials = searches.Select(one => (Animal: one.Key, Day: one.Value.Next())).Where(one => one.Day is not null).Select(one => (one.Animal, Day: one.Day!.Value)).ToList();
            if (trials.Count == 0 || prover.SupposeEach(gates, trials.Select(trial => (trial.Animal, On(proofs[trial.Animal], place, trial.Day)))) is not { } checks)
            {
                return searches.Select(one => (one.Key, one.Value.Runs()));
            }

            foreach (var (animal, day) in trials)
            {
                searches[animal].Found(day, checks[animal].IsSure(animal));
            }
        }
    }

    private DaySearch Search(AskedRecord record) => new(today.PlusDays(record.BegunBefore), gates.By.PlusDays(-record.ResultsAfter), [record.First, record.Last, record.Date]);

    private static ImmutableArray<AskedRecord> On(ProvedRecords proof, int place, LocalDate day) => proof.Records.SetItem(place, proof.Records[place] with { Date = day });
}

/// <summary>What is to be found out of an animal, and on which days.</summary>
/// <param name="Record">The record that is missed.</param>
/// <param name="Days">The days that it may be dated on so that it does it, in runs; none of a line to be mended, or of what happened and is to be looked up.</param>
public sealed record ToFindOut(AskedRecord Record, ImmutableArray<DateInterval> Days)
{
    /// <summary>
    /// From this day on it may be begun without being spoilt by a transfer that slips by a few days: what a rule looks back to moves with the day on which it is asked. Null where its
    /// rule looks back to no day.
    /// </summary>
    public LocalDate? Steady => Record.LooksBackTo?.PlusDays(FewDays - Record.BegunBefore);

    private const int FewDays = 3;

    /// <summary>Who is named for which session and sure no longer from the day on which it is taken until its result is back.</summary>
    public ImmutableArray<WaitsForIt> Waiting { get; init; } = [];

    /// <summary>The days on which it may be begun.</summary>
    public IEnumerable<DateInterval> Starts => Days.Select(run => new DateInterval(run.Start.PlusDays(-Record.BegunBefore), run.End.PlusDays(-Record.BegunBefore)));
}
