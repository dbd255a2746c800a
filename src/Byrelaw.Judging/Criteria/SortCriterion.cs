namespace Byrelaw.Judging.Criteria;

/// <summary>
/// Female, cow or heifer. A cow is a female with a calving on record, or a parity surely above 0; a heifer a
/// female whose parity is surely 0; otherwise both are not known.
/// </summary>
internal sealed class SortCriterion(HerdDays days, Audience sort, int? calving) : Criterion
{
    private readonly Parities _parities = new(days, calving);

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

    /// <summary>A calving on record makes a cow, whatever the parity says; else a parity that is surely above 0 does.</summary>
    private Truth Calved(int animal, int day, out Truth strict, ref int until)
    {
        if (calving is { } kind && FirstCalving(kind, animal) <= day)
        {
            return strict = Truth.True;
        }

        var parity = _parities.On(animal, day, ref until);
        strict = TruthOf(parity.Least, parity.MostStrictly);
        return TruthOf(parity.Least, parity.Most);
    }

    private int FirstCalving(int kind, int animal)
    {
        var run = days.Herd.Runs[kind];
        var start = run.Starts[animal];
        return start < run.Starts[animal + 1] ? run.Days[start] : Day.End;
    }

    private static Truth TruthOf(int least, double most) => least > 0 ? Truth.True : most == 0 ? Truth.False : Truth.Unknown;
}
