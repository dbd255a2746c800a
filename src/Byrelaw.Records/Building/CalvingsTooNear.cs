namespace Byrelaw.Records.Building;

/// <summary>
/// Takes calvings out that come fewer days after another than a cow can carry a calf: one of the two rows is wrong, so whether she calved on the later day is
/// not known. A row that is a calving of hers, though something of it cannot be read, counts as the earlier one too, or a smudge would make the later one believed. So does one that may be,
/// unless a service or a bull is on record that the later calf may be of, or one smudged row would put a whole season's calvings in doubt. A service or an
/// embryo of hers so few days before, and none that the calf may be of, says the same: the calf was somebody else's, or she slipped it.
/// </summary>
internal sealed class CalvingsTooNear
{
    /// <summary>Common practice, no source: a cow carries about 282 days; 200 leave room for a calf born long before its time.</summary>
    public const int FewestDays = 200;

    private readonly AnimalRow[] _animals;
    private readonly (int Animal, int Day)[] _calved;
    private readonly ILookup<int, Gap> _calvings;
    private readonly ILookup<int, Gap> _hers;
    private readonly int[] _from;
    private readonly int[] _latest;
    private readonly Lazy<CalvesFathers> _fathers;
    private readonly List<RowInDoubt> _found = [];

    private CalvingsTooNear(int calving, AnimalRow[] animals, IReadOnlyList<EventStage> stages, IEnumerable<Gap> gaps, IReadOnlySet<int> ofGroups, Vocabulary vocabulary)
    {
        _animals = animals;
        _fathers = new(() => new CalvesFathers(vocabulary, stages));
        _calved = [.. stages.SelectMany(stage => stage.Events[calving].All()).Where(row => row.Animal != Staged<Nothing>.TakenOut).Select(row => (row.Animal, row.Day))];
        Array.Sort(_calved);
        int[] speak = [calving, .. CalvesFathers.Services(vocabulary).Select(kind => kind.Id)];
        Gap[] mayBe = [.. gaps.Where(gap => gap.Kind < 0 || speak.Contains(gap.Kind))];
        _calvings = mayBe.Where(gap => gap.Kind == calving && gap is { Animal: >= 0, IsHint: false, IsOfSheet: false } && !ofGroups.Contains(gap.Line)).ToLookup(gap => gap.Animal);
        _hers = mayBe.Where(gap => gap.Animal >= 0).ToLookup(gap => gap.Animal);
        Gap[] anybodys = [.. mayBe.Where(gap => gap.Animal < 0).OrderBy(gap => gap.From)];
        _from = Array.ConvertAll(anybodys, gap => gap.From);
        _latest = Array.ConvertAll(anybodys, gap => gap.To);
        for (var i = 1; i < _latest.Length; i++)
        {
            _latest[i] = Math.Max(_latest[i], _latest[i - 1]);
        }
    }

    /// <summary>Takes them out of what was read; each becomes a gap.</summary>
    /// <param name="vocabulary">The words; without one for calving none is found.</param>
    /// <param name="animals">In the order of the herd.</param>
    /// <param name="stages">What was read, rows of mobs and of the herd among it.</param>
    /// <param name="gaps">Rows that cannot be read.</param>
    /// <param name="ofGroups">The lines of rows of mobs and of the herd: that one is hers nobody knows.</param>
    public static IReadOnlyList<RowInDoubt> TakenOut(Vocabulary vocabulary, AnimalRow[] animals, IReadOnlyList<EventStage> stages, GapTable gaps, IReadOnlySet<int> ofGroups)
    {
        if (vocabulary.Calving is not { Id: var kind })
        {
            return [];
        }

        var calvings = new CalvingsTooNear(kind, animals, stages, gaps.Gaps, ofGroups, vocabulary);
        foreach (var stage in stages)
        {
            calvings.TakeOut(stage.Events[kind]);
        }

        gaps.AddHers(calvings._found.Select(row => new Gap(row.Animal, kind, row.Day, row.Day, row.Line) { IsTooNear = true }));
        return calvings._found;
    }

    private void TakeOut(ChunkedList<Staged<Nothing>> rows)
    {
        for (var chunk = 0; chunk < rows.ChunkCount; chunk++)
        {
            foreach (ref var row in rows.Chunk(chunk))
            {
                if (row.Animal != Staged<Nothing>.TakenOut && IsTooNear(row.Animal, row.Day))
                {
                    _found.Add(new RowInDoubt(row.Animal, row.Day, row.Line));
                    row.Animal = Staged<Nothing>.TakenOut;
                }
            }
        }
    }

    private bool IsTooNear(int animal, int day)
    {
        var (first, last) = (day - FewestDays + 1, day - 1);
        var at = Array.BinarySearch(_calved, (animal, first));
        var next = at < 0 ? ~at : at;
        return (next < _calved.Length && _calved[next].Animal == animal && _calved[next].Day <= last)
            || _calvings[animal].Any(gap => gap.From <= last && gap.To >= first)
            || ((_fathers.Value.Served(animal, first, last) || _hers[animal].Any(gap => gap.From <= last && gap.To >= first)
                || MayBeAnybodys(Math.Max(first, _animals[animal].BornFirst), last)) && !_fathers.Value.Are(animal, day));
    }

    /// <summary>Whether a row whose animal cannot be read may be a calving or a service of hers on one of these days.</summary>
    private bool MayBeAnybodys(int first, int last)
    {
        var at = Array.BinarySearch(_from, last + 1);
        at = at < 0 ? ~at : at;
        while (at > 0 && _from[at - 1] > last)
        {
            at--;
        }

        return at > 0 && _latest[at - 1] >= first;
    }
}
