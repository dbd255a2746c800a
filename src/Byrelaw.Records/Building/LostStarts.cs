namespace Byrelaw.Records.Building;

/// <summary>
/// Ends of spells without their starts: the bull went out, or may have, and nothing says when he came. The start was on some day since the
/// end before, since she joined or since it is possible at all, whichever is last. A calving ends spells too, but it comes for its own reasons.
/// </summary>
internal sealed class LostStarts
{
    private readonly Vocabulary _vocabulary;
    private readonly HerdBuilder _herd;
    private readonly int[][] _neededFrom;
    private readonly Gap[] _gaps;
    private readonly int[] _joins;

    /// <summary>Of a herd whose runs are built.</summary>
    /// <param name="vocabulary">The words.</param>
    /// <param name="herd">With its runs.</param>
    /// <param name="neededFrom">As <see cref="Coverage.NeededFrom"/>.</param>
    /// <param name="gaps">Rows that cannot be read.</param>
    public LostStarts(Vocabulary vocabulary, HerdBuilder herd, int[][] neededFrom, IEnumerable<Gap> gaps)
    {
        (_vocabulary, _herd, _neededFrom) = (vocabulary, herd, neededFrom);
        _gaps = [.. gaps];
        _joins = [.. vocabulary.Kinds.Where(kind => kind is EventKind { Effect: HerdEffect.Joins }).Select(kind => kind.Id)];
    }

    /// <summary>The starts that are not on record, one for all rows that tell of the same.</summary>
    public List<Gap> Gaps { get; } = [];

    /// <summary>Rows that can be read and end what never began, with the kind that would have begun it.</summary>
    public List<(int Kind, RowInDoubt Row)> Rows { get; } = [];

    /// <summary>Finds them.</summary>
    public LostStarts Find()
    {
        foreach (var spell in _vocabulary.Spells.Where(spell => spell.Until != _vocabulary.Calving))
        {
            var mayEnd = _gaps.Where(gap => gap.Kind == spell.Until.Id || gap.Kind < 0).ToLookup(gap => gap.Animal);
            var anybodys = mayEnd[-1].ToList();
            for (var animal = 0; animal < _neededFrom[spell.Until.Id].Length; animal++)
            {
                if (anybodys.Count > 0 || mayEnd.Contains(animal) || _herd.Runs[spell.Until.Id].DaysOf(animal).Length > 0)
                {
                    Walk(spell, animal, [.. anybodys, .. mayEnd[animal]]);
                }
            }
        }

        return this;
    }

    /// <summary>Goes through her days of change; while she is out, an end that comes is one without its start.</summary>
    private void Walk(Spell spell, int animal, Gap[] mayEnd)
    {
        var (starts, ends) = (OwnRun(spell.From.Id), _herd.Runs[spell.Until.Id]);
        var (since, isIn) = (_neededFrom[spell.From.Id][animal], false);
        foreach (var day in Days(animal, starts, ends))
        {
            var (isStart, isEnd, joins) = (starts.DaysOf(animal).Contains(day), ends.DaysOf(animal).Contains(day), Joins(animal, day));
            if (!isIn)
            {
                Add(spell, animal, since, isStart || joins ? day - 1 : day, mayEnd, joins || isStart || !isEnd ? null : day);
            }

            since = joins ? Math.Max(since, day) : since;
            isIn = !joins && isIn;
            isIn = isStart == isEnd ? isIn : isStart;
            since = isEnd ? Math.Max(since, day + 1) : since;
        }

        if (!isIn)
        {
            Add(spell, animal, since, _herd.KnownDay, mayEnd, null);
        }
    }

    /// <summary>One stretch without her: of all that ends, or may end, what never began in it, the latest.</summary>
    private void Add(Spell spell, int animal, int since, int last, Gap[] mayEnd, int? recorded)
    {
        var (latest, line) = (int.MinValue, 0);
        if (recorded is { } end)
        {
            // One row of each day stands in a run; of all rows and of her own it may be two.
            foreach (var row in LinesOn(_herd.Runs[spell.Until.Id], animal, end).Concat(LinesOn(OwnRun(spell.Until.Id), animal, end)).Distinct())
            {
                if (!HasStartOfItsMobs(spell, row, end))
                {
                    (latest, line) = (end, latest == end ? Math.Min(line, row) : row);
                    Rows.Add((spell.From.Id, new RowInDoubt(animal, end, row)));
                }
            }
        }

        foreach (var gap in mayEnd)
        {
            var day = Math.Min(Math.Min(gap.To, _herd.KnownDay), last);
            var first = Math.Max(Math.Max(gap.From, _neededFrom[spell.Until.Id][animal]), since);
            while (day >= first && day >= latest && HasStartOfItsMobs(spell, gap.Line, day))
            {
                day--;
            }

            if (day >= first && (day > latest || (day == latest && gap.Line < line)))
            {
                (latest, line) = (day, gap.Line);
            }
        }

        if (latest > since)
        {
            Gaps.Add(new Gap(animal, spell.From.Id, since, latest - 1, line) { IsLostStart = true });
        }
    }

    private SortedSet<int> Days(int animal, KindRun starts, KindRun ends)
    {
        var days = new SortedSet<int>();
        Add(starts);
        Add(ends);
        foreach (var kind in _joins)
        {
            Add(_herd.Runs[kind]);
        }

        return days;

        void Add(KindRun run)
        {
            foreach (var day in run.DaysOf(animal))
            {
                days.Add(day);
            }
        }
    }

    private KindRun OwnRun(int kind) => (_herd.OwnRuns.Length == 0 ? null : _herd.OwnRuns[kind]) ?? _herd.Runs[kind];

    private bool Joins(int animal, int day)
    {
        foreach (var kind in _joins)
        {
            if (_herd.Runs[kind].DaysOf(animal).Contains(day))
            {
                return true;
            }
        }

        return false;
    }

    private static IEnumerable<int> LinesOn(KindRun run, int animal, int day) =>
        Enumerable.Range(run.Starts[animal], run.Starts[animal + 1] - run.Starts[animal]).Where(place => run.Days[place] == day).Select(place => run.Lines[place]);

    /// <summary>Of a row of a mob or the herd: a row of that mob, or of the herd, began it, and none since has ended it. Where whole mobs moved
    /// since, nobody can say whose it was.</summary>
    private bool HasStartOfItsMobs(Spell spell, int line, int day)
    {
        var rows = _herd.MobRows;
        if (!rows.Lines.Contains(line))
        {
            return false;
        }

        var mob = Array.Find(rows.Spells, row => row.Line == line).Mob;
        return Array.Exists(rows.Spells, start => start.Kind == spell.From.Id && IsOther(start)
            && !Array.Exists(rows.Spells, end => end.Kind == spell.Until.Id && IsOther(end) && end.Day >= start.Day && end.Day < day)
            && !Array.Exists(rows.Moves, move => move.Day >= start.Day && move.Day <= day));

        bool IsOther(MobRow row) => row.Line != line && row.Day <= day && (row.Mob == mob || row.Mob == MobStays.NotKnown || mob == MobStays.NotKnown);
    }
}
