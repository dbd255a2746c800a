namespace Byrelaw.Judging.Criteria;

/// <summary>How often an animal may have calved by some day.</summary>
/// <param name="Counted">Calvings on record by then.</param>
/// <param name="Least">The least that it may be.</param>
/// <param name="Most">The most.</param>
/// <param name="MostStrictly">The most, where nothing is taken to be known of days after the known day.</param>
internal readonly record struct Parity(int Counted, int Least, double Most, double MostStrictly);

/// <summary>
/// A parity is true of one day. Earlier it was less by the calvings between, later it is more by those since; where calvings between
/// may be missing it is anything that they leave possible.
/// </summary>
internal sealed class Parities(HerdDays days, int? calving)
{
    private const int Blank = -1;

    /// <summary>Her parity on a day.</summary>
    /// <param name="animal">Her place.</param>
    /// <param name="day">The day.</param>
    /// <param name="until">Lowered to the last day on which the same is sure to hold.</param>
    public Parity On(int animal, int day, ref int until)
    {
        var counted = 0;
        if (calving is { } kind)
        {
            counted = Counted(kind, animal, day);
            until = Math.Min(until, days.NextEdge(animal, kind, day) - 1);
            var needed = days.Coverage.NeededFrom[kind][animal];
            if (day < needed)
            {
                until = Math.Min(until, needed - 1);
                return new Parity(counted, counted, counted, counted);
            }
        }

        var (recorded, on) = (days.Herd.RecordedParity[animal], days.Herd.DayOfParity(animal));
        return recorded < 0 || on <= Day.Start ? ByCalvings(animal, day, counted, isBlank: recorded == Blank)
            : day < on ? Earlier(animal, day, on, recorded, counted, ref until)
            : Later(animal, day, on, recorded, counted, ref until);
    }

    /// <summary>Whether calvings on record speak against her parity: more of them by its day, or too few.</summary>
    public bool SpeakAgainstEachOther(int animal) =>
        days.Herd.RecordedParity[animal] is var recorded and >= 0
        && ((days.Herd.ParityIsDoubted is { Length: > 0 } doubted && doubted[animal])
            || (calving is { } kind && Counted(kind, animal, days.Herd.DayOfParity(animal)) > recorded));

    private Parity ByCalvings(int animal, int day, int counted, bool isBlank)
    {
        var isCovered = isBlank && calving is { } kind && days.Covers(animal, kind, Day.Start, day);
        var isStrictlyCovered = isCovered && !days.IsOpen(animal, calving!.Value, day);
        return new Parity(counted, counted, isCovered ? counted : double.PositiveInfinity, isStrictlyCovered ? counted : double.PositiveInfinity);
    }

    private Parity Earlier(int animal, int day, int on, int recorded, int counted, ref int until)
    {
        until = Math.Min(until, on - 1);
        var (byThen, least, most) = OnItsDay(animal, on, recorded);

        // What was written down after the known day is not seen, and the parity is of today.
        var open = on > days.KnownDay ? on : calving is { } kind ? days.LastUncovered(animal, kind, day + 1, on) : on;
        if (open > day)
        {
            until = Math.Min(until, open - 1);
            most = Math.Max(counted, most < double.PositiveInfinity ? recorded : most);
            return new Parity(counted, Math.Min(counted, recorded), most, most);
        }

        var between = byThen - counted;
        most = Math.Max(0, most - between);
        return new Parity(counted, Math.Max(0, least - between), most, most);
    }

    private Parity Later(int animal, int day, int on, int recorded, int counted, ref int until)
    {
        var (byThen, least, most) = OnItsDay(animal, on, recorded);
        if (day == on)
        {
            until = Math.Min(until, on);
            return new Parity(counted, least, most, most);
        }

        var since = counted - byThen;
        var isCovered = calving is { } kind && days.Covers(animal, kind, on + 1, day);
        var isStrictlyCovered = isCovered && !days.IsOpen(animal, calving!.Value, day);
        return new Parity(
            counted, least + since, isCovered ? most + since : double.PositiveInfinity, isStrictlyCovered ? most + since : double.PositiveInfinity);
    }

    /// <summary>On the day that it is of: the number; where calvings on record speak against it, either or between; more where a row that
    /// cannot be read may be a calving.</summary>
    private (int Counted, int Least, double Most) OnItsDay(int animal, int on, int recorded)
    {
        if (calving is not { } kind)
        {
            return (0, recorded, recorded);
        }

        var counted = Counted(kind, animal, on);
        var isDoubted = days.Herd.ParityIsDoubted is { Length: > 0 } doubted && doubted[animal];
        return (
            counted, isDoubted ? Math.Min(counted, recorded) : recorded,
            days.Coverage.AnyGap(animal, kind, Day.Start, on) ? double.PositiveInfinity : Math.Max(counted, recorded));
    }

    private int Counted(int kind, int animal, int day)
    {
        var run = days.Herd.Runs[kind];
        return Runs.LastAtMost(run, animal, day) + 1 - run.Starts[animal];
    }
}
