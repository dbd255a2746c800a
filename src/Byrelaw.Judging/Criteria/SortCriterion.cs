namespace Byrelaw.Judging.Criteria;

/// <summary>
/// Female, cow or heifer. A cow is a female with a calving or a recorded parity above 0; a heifer a
/// female for whom calving never happened, or with recorded parity 0; otherwise both are not known.
/// </summary>
internal sealed class SortCriterion(HerdDays days, Audience sort, int? calving) : Criterion
{
    public override Kleene On(int animal, int day, ref int until, Notes? notes)
    {
        var female = days.Herd.Sexes[animal] switch
        {
            Sex.Female => Kleene.True,
            Sex.Male or Sex.Steer => Kleene.False,
            _ => Kleene.Unknown,
        };
        if (sort == Audience.Females || female.IsFalse)
        {
            return female;
        }

        var calved = Calved(animal, day, out var strict, ref until);
        if (day <= days.KnownDay)
        {
            until = Math.Min(until, days.KnownDay);
        }

        var cow = Kleene.Of(calved, strict);
        return female & (sort == Audience.Cows ? cow : !cow);
    }

    private Truth Calved(int animal, int day, out Truth strict, ref int until)
    {
        var recorded = days.Herd.RecordedParity[animal];
        var calved = recorded > 0 ? Truth.True : recorded == 0 ? Truth.False : Truth.Unknown;
        strict = calved;
        if (calving is not { } kind)
        {
            return calved;
        }

        var run = days.Herd.Runs[kind];
        var start = run.Starts[animal];
        if (start < run.Starts[animal + 1])
        {
            if (run.Days[start] <= day)
            {
                return strict = Truth.True;
            }

            until = Math.Min(until, run.Days[start] - 1);
        }

        until = Math.Min(until, days.NextCoverageEdge(animal, kind, day) - 1);
        if (recorded == 0 && days.Coverage.AnyGap(animal, kind, Day.Start, day))
        {
            // A row that could not be read may be a calving: then the parity is out of date.
            return strict = Truth.Unknown;
        }

        if (recorded < 0)
        {
            // A parity that could not be read may be above 0, whatever calvings are on record.
            calved = recorded != Unreadable && days.Covers(animal, kind, Day.Start, day) ? Truth.False : Truth.Unknown;
            strict = days.IsOpen(animal, kind, day) ? Truth.Unknown : calved;
        }

        return calved;
    }

    private const int Unreadable = -2;
}
