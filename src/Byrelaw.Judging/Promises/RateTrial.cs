using MathNet.Numerics.Distributions;

namespace Byrelaw.Judging.Promises;

/// <summary>
/// Tries an expectation about how many entries a year there are: it fails where fewer than one farm in a hundred with the
/// expected rate would have so few (Poisson).
/// </summary>
internal static class RateTrial
{
    private const double DaysInAYear = 365.25;
    private const double OneInAHundred = 0.01;
    private const int Unreadable = -2;

    /// <summary>Entries on the promised days, and the years of cows on them.</summary>
    public static (int Found, double CowYears) Count(Herd herd, RateExpectation expectation)
    {
        var kind = expectation.Kind.Id;
        var (found, days) = (0, 0L);
        var perhaps = FirstPerhaps(herd, kind, ref days);
        for (var animal = 0; animal < herd.Count; animal++)
        {
            found += FoundOf(herd, kind, animal);
            days += CowDays(herd, kind, animal, perhaps[animal]);
        }

        return (found, days / DaysInAYear);
    }

    /// <summary>By animal: the first day of a row that may be a calving of hers; <see cref="Day.End"/> for none. One of an animal that cannot be
    /// read makes a cow of somebody: her days are added.</summary>
    private static int[] FirstPerhaps(Herd herd, int kind, ref long days)
    {
        var first = new int[herd.Count];
        Array.Fill(first, Day.End);
        if (herd.Vocabulary.Calving is not { } calving || !herd.Coverage.HasGaps[calving.Id])
        {
            return first;
        }

        var oldEnough = herd.Coverage.NeededFrom[calving.Id];
        foreach (var gap in herd.Coverage.Gaps)
        {
            if (gap.Kind >= 0 && gap.Kind != calving.Id)
            {
                continue;
            }

            if (gap.Animal < 0)
            {
                days += Math.Max(0, herd.Coverage.Reach[kind] - Math.Max(gap.From, herd.Coverage.Since[kind]) + 1);
            }
            else if (gap.To >= oldEnough[gap.Animal])
            {
                first[gap.Animal] = Math.Min(first[gap.Animal], Math.Max(gap.From, oldEnough[gap.Animal]));
            }
        }

        return first;
    }

    /// <summary>Whether so few are hard to believe.</summary>
    public static bool Fails(RateExpectation expectation, int found, double cowYears)
    {
        var expected = cowYears * expectation.Count / expectation.Cows;
        return expected > 0 && Poisson.CDF(expected, found) < OneInAHundred;
    }

    private static int FoundOf(Herd herd, int kind, int animal)
    {
        var found = 0;
        foreach (var day in herd.Runs[kind].DaysOf(animal))
        {
            found += day >= herd.Coverage.Since[kind] && day <= herd.Coverage.Reach[kind] ? 1 : 0;
        }

        return found;
    }

    /// <summary>Days in the herd after her first calving on record, or the first row that may be one, as far as they are promised. Rows that
    /// may say that she came or left are passed over: they must not make few entries easier to believe.</summary>
    private static int CowDays(Herd herd, int kind, int animal, int perhapsFrom)
    {
        if (herd.Vocabulary.Calving is not { } calving || herd.Sexes[animal] is Sex.Male or Sex.Steer)
        {
            return 0;
        }

        var (joined, left) = (herd.Membership.JoinedOnRecord[animal], herd.Membership.LeftOnRecord[animal]);
        var from = Math.Max(Math.Max(Math.Min(CowFrom(herd, calving.Id, animal), perhapsFrom), herd.Coverage.Since[kind]), joined);
        var to = Math.Min(herd.Coverage.Reach[kind], left);
        var days = Math.Max(0, to - from + 1);
        foreach (var hole in herd.Coverage.HolesOf(animal, kind))
        {
            days -= Math.Max(0, Math.Min(to, hole.To) - Math.Max(from, hole.From) + 1);
        }

        return Math.Max(0, days);
    }

    /// <summary>The first day on which she was a cow by what can be read, or may have been by a parity that cannot; <see cref="Day.End"/> where nothing says so.</summary>
    private static int CowFrom(Herd herd, int calving, int animal)
    {
        var calvings = herd.Runs[calving].DaysOf(animal);
        return calvings.Length > 0 ? calvings[0]
            : herd.RecordedParity[animal] is > 0 or Unreadable ? herd.Coverage.NeededFrom[calving][animal]
            : Day.End;
    }
}
