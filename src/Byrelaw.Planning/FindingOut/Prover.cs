using Byrelaw.Judging.Supposing;
using Byrelaw.Records.Reading;

namespace Byrelaw.Planning.FindingOut;

/// <summary>
/// Proves who would be sure if what she misses turned out well: her records are supposed, and she is judged again. Nothing is claimed that was not found so. All
/// animals are tried at once, each by her next way where a rule of hers does not hold yet; but what says something of others is supposed only for those who suppose it themselves.
/// </summary>
/// <param name="rulebook">The rules.</param>
/// <param name="herd">The records.</param>
/// <param name="besides">What is supposed whatever is tried, such as collections that are planned.</param>
internal sealed class Prover(Rulebook rulebook, Herd herd, params ImmutableArray<SupposedRow> besides)
{
    private readonly SupposedFarm? _farm = SupposedFarm.Of(rulebook, herd);
    private readonly SaidOfOthers _others = new(rulebook, herd);

    /// <summary>Those of whom it is proved.</summary>
    public Dictionary<int, ProvedRecords> Prove(Gates gates, IReadOnlyList<OpenAnimal> animals)
    {
        var proved = new Dictionary<int, ProvedRecords>();
        var open = animals.Where(one => one.Rules.All(rule => !rule.Ways.IsEmpty)).Select(one => new Trial(one)).ToList();
        while (open.Count > 0 && SupposeEach(gates, open.Select(trial => (trial.Animal, trial.Records))) is { } checks)
        {
            foreach (var trial in open.Where(trial => checks[trial.Animal].IsSure(trial.Animal)))
            {
                proved[trial.Animal] = new ProvedRecords(trial.Records);
            }

            open.RemoveAll(trial => proved.ContainsKey(trial.Animal) || !trial.Next(checks[trial.Animal]));
        }

        return proved;
    }

    /// <summary>Of animals for whom a record counts too late: the record, from the first day on which it makes its rule hold. One that no day makes hold is not told.</summary>
    public Dictionary<int, AskedRecord> CountsFrom(Gates gates, IReadOnlyList<OpenAnimal> animals)
    {
        var found = new Dictionary<int, AskedRecord>();
        var late = animals.Select(one => (one.Animal, Rule: one.Rules.FirstOrDefault(rule => rule.Closed is { IsTaken: true }))).Where(one => one.Rule is not null).ToList();

        // What a rule misses is told for the first of its days; on the last of them it may look back to as many days later.
        var most = gates.Lists.Max(gate => Period.DaysBetween(gate.From, gate.To));
        for (var days = 0; days <= most && late.Count > 0; days++)
        {
            if (SupposeEach(gates, late.Select(one => (one.Animal, ImmutableArray.Create(one.Rule!.Closed! with { Date = one.Rule.Closed.First.PlusDays(days) })))) is not { } checks)
            {
                break;
            }

            foreach (var (animal, rule) in late.Where(one => checks[one.Animal].Holds(one.Rule!, one.Animal)))
            {
                found[animal] = rule!.Closed! with { First = rule.Closed.First.PlusDays(days) };
            }

            late.RemoveAll(one => found.ContainsKey(one.Animal));
        }

        return found;
    }

    /// <summary>Each animal with the farm as if her own records stood in its book; null for a herd that was not read.</summary>
    public Dictionary<int, GateCheck>? SupposeEach(Gates gates, IEnumerable<(int Animal, ImmutableArray<AskedRecord> Records)> trials)
    {
        if (_farm is null)
        {
            return null;
        }

        var checks = new Dictionary<int, GateCheck>();
        foreach (var alike in trials.GroupBy(trial => _others.Of(trial.Records), StringComparer.Ordinal))
        {
            var check = Suppose(_farm, gates, [.. alike.SelectMany(trial => trial.Records)]);
            foreach (var (animal, _) in alike)
            {
                checks[animal] = check;
            }
        }

        return checks;
    }

    private GateCheck Suppose(SupposedFarm farm, Gates gates, List<AskedRecord> supposed) =>
        new(farm.Judge(new Supposition
        {
            Records = new Supposed
            {
                Rows = [.. besides, .. supposed.SelectMany(record => record.Rows(herd)).DistinctBy(row => (row.Animal, row.Kind, row.Date))],
                WithoutLines = supposed.Where(record => record.WithoutLine > 0).Select(record => record.WithoutLine).ToHashSet(),
            },
        }), gates);

    /// <summary>One animal's trial: for each of her rules the way that is tried.</summary>
    private sealed class Trial(OpenAnimal open)
    {
        private readonly int[] _at = new int[open.Rules.Length];

        public int Animal => open.Animal;

        /// <summary>What is supposed of her: a kind once a day, and of two that would say it the one that says more.</summary>
        public ImmutableArray<AskedRecord> Records =>
        [
            .. open.Rules.SelectMany((rule, i) => rule.Ways[_at[i]]).OrderByDescending(record => record.Details.Length)
                .DistinctBy(record => (record.Kind.Id, record.Date, record.WithoutLine)),
        ];

        /// <summary>Goes on to the next way of each rule that does not hold; false where there is none, or every rule holds and she still is not sure: she needs more.</summary>
        public bool Next(GateCheck check)
        {
            var moved = false;
            for (var i = 0; i < _at.Length; i++)
            {
                if (!check.Holds(open.Rules[i], open.Animal))
                {
                    (_at[i], moved) = (_at[i] + 1, true);
                    if (_at[i] == open.Rules[i].Ways.Length)
                    {
                        return false;
                    }
                }
            }

            return moved;
        }
    }
}
