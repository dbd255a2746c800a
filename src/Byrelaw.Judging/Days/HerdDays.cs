namespace Byrelaw.Judging.Days;

/// <summary>Asks a herd's columns what the criteria need to know of days.</summary>
/// <remarks>
/// "Covered" here takes days after the known day as days on which nothing more happens. Strictly, no
/// day after it is covered, but for days on which the kind need not be: see <see cref="IsOpen"/>.
/// </remarks>
internal sealed class HerdDays
{
    private readonly Coverage _coverage;
    private readonly int[] _left;

    // From this day on, nothing about a kind's coverage changes for any animal but by her leaving.
    private readonly int[] _settledFrom;
    private readonly Dictionary<string, SpellDays> _spells = new(StringComparer.Ordinal);
    private readonly Lock _gate = new();
    private HerdDays? _own;
    private Whereabouts? _where;

    public HerdDays(Herd herd)
    {
        Herd = herd;
        _coverage = herd.Coverage;
        _left = _coverage.Left;
        KnownDay = _coverage.KnownDay;
        _settledFrom = new int[herd.Runs.Length];
        for (var kind = 0; kind < _settledFrom.Length; kind++)
        {
            _settledFrom[kind] = LastChange(kind);
        }
    }

    public Herd Herd { get; }

    /// <summary>Counts the steps of judging where somebody asks; else null.</summary>
    public StepCounter? Steps { get; set; }

    public Coverage Coverage => _coverage;

    /// <summary>The day the records reach.</summary>
    public int KnownDay { get; }

    /// <summary>By animal: the day she left; <see cref="Day.End"/> where she has not.</summary>
    public int[] Left => _left;

    /// <summary>From this day on, nothing about a kind's coverage changes for any animal but by her leaving.</summary>
    public int SettledFrom(int kind) => _settledFrom[kind];

    /// <summary>The same herd, where a row about a mob or the herd that begins a spell is no entry of each animal's: it is the mob's. Nor is a
    /// start that is not on record: what it may have begun is over at its end.</summary>
    public HerdDays Own => _own ??= Herd.MobRows.Spells.Length == 0 && !Array.Exists(Coverage.Gaps, gap => gap.IsLostStart) ? this : new HerdDays(WithOwnStarts(Herd));

    /// <summary>Which mob an animal was in, as far as the farm says that all moves are on record.</summary>
    public Whereabouts Where => _where ??= new Whereabouts(this);

    /// <summary>When animals are in a spell.</summary>
    public SpellDays InSpell(Spell spell)
    {
        lock (_gate)
        {
            if (!_spells.TryGetValue(spell.Name, out var days))
            {
                _spells[spell.Name] = days = new SpellDays(this, spell);
            }

            return days;
        }
    }

    private static Herd WithOwnStarts(Herd herd)
    {
        var runs = (KindRun[])herd.Runs.Clone();
        var starts = new bool[runs.Length];
        foreach (var spell in herd.Vocabulary.Spells)
        {
            runs[spell.From.Id] = herd.OwnRun(spell.From.Id);
            starts[spell.From.Id] = true;
        }

        return herd.With(runs, herd.Coverage.Without(gap => gap.IsLostStart || (gap.Kind >= 0 && starts[gap.Kind] && herd.MobRows.Lines.Contains(gap.Line))));
    }

    /// <summary>Whether every one of these days is covered; no day at all is.</summary>
    public bool Covers(int animal, int kind, int from, int to) =>
        (from >= _settledFrom[kind] && to <= _left[animal]) || _coverage.Covers(animal, kind, from, to, strict: false);

    /// <summary>Whether a day after the known day lies open: strictly, anything of this kind may have happened on it.</summary>
    public bool IsOpen(int animal, int kind, int day) => day > KnownDay && day >= _coverage.NeededFrom[kind][animal];

    /// <summary>The first day after <paramref name="day"/> on which coverage may differ from the day before it.</summary>
    public int NextCoverageEdge(int animal, int kind, int day)
    {
        var left = _left[animal];
        var edge = left >= day && left < Day.End ? left + 1 : int.MaxValue;
        return day >= _settledFrom[kind] ? edge : Math.Min(edge, NextUnsettledEdge(animal, kind, day));
    }

    /// <summary>
    /// The first day after <paramref name="day"/> that differs, for this kind, from the day before it:
    /// by an event on either, or in coverage.
    /// </summary>
    public int NextEdge(int animal, int kind, int day)
    {
        var run = Herd.Runs[kind];
        var last = Runs.LastAtMost(run, animal, day);
        var edge = NextCoverageEdge(animal, kind, day);
        if (last >= run.Starts[animal] && run.Days[last] == day)
        {
            return Math.Min(edge, day + 1);
        }

        return last + 1 < run.Starts[animal + 1] ? Math.Min(edge, run.Days[last + 1]) : edge;
    }

    /// <summary>The first day from <paramref name="from"/> to <paramref name="to"/> that is not covered; int.MaxValue where all are.</summary>
    /// <param name="animal">Whose.</param>
    /// <param name="kind">Of what.</param>
    /// <param name="from">The first day to look at.</param>
    /// <param name="to">The last.</param>
    /// <param name="strict">Coverage stops at the known day.</param>
    public int FirstUncovered(int animal, int kind, int from, int to, bool strict)
    {
        var day = from;
        while (day <= to)
        {
            if (!Covers(animal, kind, day, day))
            {
                return day;
            }

            if (strict && IsOpen(animal, kind, day))
            {
                return day;
            }

            var next = NextCoverageEdge(animal, kind, day);
            day = strict && day <= KnownDay ? Math.Min(next, KnownDay + 1) : next;
        }

        return int.MaxValue;
    }

    /// <summary>The last day from <paramref name="from"/> to <paramref name="to"/> that is not covered; int.MinValue where all are.</summary>
    public int LastUncovered(int animal, int kind, int from, int to)
    {
        var last = int.MinValue;
        var day = from;
        while (day <= to)
        {
            var next = NextCoverageEdge(animal, kind, day);
            if (!Covers(animal, kind, day, day))
            {
                last = Math.Min(next - 1, to);
            }

            day = next;
        }

        return last;
    }

    private int LastChange(int kind)
    {
        if (_coverage.HasGaps[kind])
        {
            return int.MaxValue;
        }

        var from = Day.Start;
        for (var animal = 0; animal < Herd.Count; animal++)
        {
            var start = Math.Max(_coverage.Since[kind], _coverage.Joined[animal]);
            from = Math.Max(from, Math.Max(start, _coverage.NeededFrom[kind][animal]));
        }

        foreach (var hole in _coverage.Holes)
        {
            from = hole.Kind != kind ? from : hole.To == Day.End ? int.MaxValue : Math.Max(from, hole.To + 1);
        }

        return from;
    }

    private int NextUnsettledEdge(int animal, int kind, int day)
    {
        var edge = int.MaxValue;
        var needed = _coverage.NeededFrom[kind][animal];
        if (needed > day)
        {
            edge = needed;
        }

        var start = Math.Max(_coverage.Since[kind], _coverage.Joined[animal]);
        if (start > day && start < edge)
        {
            edge = start;
        }

        return Math.Min(Math.Min(edge, _coverage.NextGapEdge(animal, kind, day)), _coverage.NextHoleEdge(animal, kind, day));
    }
}
