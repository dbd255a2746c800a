namespace Byrelaw.Judging.Days;

/// <summary>
/// "Her last X" as of a day. X may have happened later than on record wherever X is not covered;
/// then an answer stands only if it is the same for every such day.
/// </summary>
internal sealed class Anchor(HerdDays days, int[] kinds)
{
    private readonly int[] _declared = Array.ConvertAll(kinds, kind => days.Herd.Vocabulary.ById[kind].Declaration.Id);

    public int[] Kinds => kinds;

    /// <summary>Whether one of the anchor's kinds is this one, with whatever filter: a mating that is natural is a mating.</summary>
    public bool Has(int kind) => Array.IndexOf(_declared, days.Herd.Vocabulary.ById[kind].Declaration.Id) >= 0;

    /// <summary>
    /// Her last X where that is plain: one kind, on record, and records kept ever since. False where it is
    /// not; nothing has been touched then.
    /// </summary>
    public bool IsPlain(int animal, int day, ref int until, out int last)
    {
        last = 0;
        if (kinds.Length != 1 || day > days.Left[animal])
        {
            return false;
        }

        var kind = kinds[0];
        var run = days.Herd.Runs[kind];
        var place = Runs.LastAtMost(run, animal, day);
        if (place < run.Starts[animal] || (last = run.Days[place]) + 1 < days.SettledFrom(kind))
        {
            return false;
        }

        until = Math.Min(until, days.Left[animal]);
        if (place + 1 < run.Starts[animal + 1])
        {
            until = Math.Min(until, run.Days[place + 1] - 1);
        }

        return true;
    }

    /// <summary>Reads the anchor on a day, and lowers <paramref name="until"/> to the last day on which it reads the same
    /// (apart from its latest day moving with the day of judging).</summary>
    public AnchorReading Read(int animal, int day, ref int until, Notes? notes)
    {
        var last = int.MinValue;
        foreach (var kind in kinds)
        {
            var run = days.Herd.Runs[kind];
            var place = Runs.LastAtMost(run, animal, day);
            if (place >= run.Starts[animal])
            {
                last = Math.Max(last, run.Days[place]);
            }

            if (place + 1 < run.Starts[animal + 1])
            {
                until = Math.Min(until, run.Days[place + 1] - 1);
            }

            until = Math.Min(until, days.NextCoverageEdge(animal, kind, day) - 1);
        }

        if (last == int.MinValue)
        {
            return NeverOrNotKnown(animal, day, notes);
        }

        var latest = last;
        var strictLatest = last;
        foreach (var kind in kinds)
        {
            if (!days.Covers(animal, kind, last + 1, day))
            {
                latest = Math.Max(latest, days.LastUncovered(animal, kind, last + 1, day));
                notes?.NotKept(kind, last + 1, day);
            }

            if (days.IsOpen(animal, kind, day))
            {
                strictLatest = day;
            }
        }

        notes?.Event(animal, kinds, last);
        return new AnchorReading(AnchorState.Recorded, AnchorState.Recorded, last, latest, Math.Max(latest, strictLatest));
    }

    /// <summary>Whether the last X may have been on a day.</summary>
    public bool MayHaveBeen(int animal, AnchorReading reading, int day, bool strict) =>
        day == reading.Last
        || (day > reading.Last && day <= (strict ? reading.StrictLatest : reading.Latest) && MayHaveHappened(animal, day, day, strict));

    /// <summary>The first day after another on which it may become, or cease to be, possible that X happened unrecorded.</summary>
    public int NextTurn(int animal, int day)
    {
        var next = day <= days.KnownDay ? days.KnownDay + 1 : int.MaxValue;
        foreach (var kind in kinds)
        {
            next = Math.Min(next, days.NextCoverageEdge(animal, kind, day));
        }

        return next;
    }

    /// <summary>Whether X may have happened unrecorded on a day from <paramref name="from"/> to <paramref name="to"/>.</summary>
    public bool MayHaveHappened(int animal, int from, int to, bool strict)
    {
        foreach (var kind in kinds)
        {
            if (to >= from && (!days.Covers(animal, kind, from, to) || (strict && days.IsOpen(animal, kind, to))))
            {
                return true;
            }
        }

        return false;
    }

    private AnchorReading NeverOrNotKnown(int animal, int day, Notes? notes)
    {
        var (assumed, strict) = (AnchorState.Never, AnchorState.Never);
        foreach (var kind in kinds)
        {
            if (!days.Covers(animal, kind, Day.Start, day))
            {
                notes?.NeverRecorded(kind, day);
                assumed = AnchorState.NotKnown;
            }

            if (days.IsOpen(animal, kind, day))
            {
                strict = AnchorState.NotKnown;
            }
        }

        if (assumed == AnchorState.NotKnown)
        {
            return new AnchorReading(AnchorState.NotKnown, AnchorState.NotKnown, 0, 0, 0);
        }

        var born = days.Herd.BornEarliest[animal];
        return new AnchorReading(AnchorState.Never, strict, born, born, born);
    }
}

/// <summary>What is known of "her last X".</summary>
internal enum AnchorState : byte
{
    /// <summary>Not recorded and not covered.</summary>
    NotKnown,

    /// <summary>Covered from birth, and not recorded: counts run from birth.</summary>
    Never,

    /// <summary>On record.</summary>
    Recorded,
}

/// <summary>"Her last X" on a day.</summary>
/// <param name="State">Recorded, never, or not known.</param>
/// <param name="StrictState">The same with coverage stopping at the known day.</param>
/// <param name="Last">The last recorded; her birth where it never happened.</param>
/// <param name="Latest">The latest day on which it may have been; equal to <paramref name="Last"/> where that is certain.</param>
/// <param name="StrictLatest">The same with coverage stopping at the known day.</param>
internal readonly record struct AnchorReading(AnchorState State, AnchorState StrictState, int Last, int Latest, int StrictLatest);
