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

    /// <summary>Entries on the promised days, and the years of cows on them.</summary>
    public static (int Found, double CowYears) Count(Herd herd, RateExpectation expectation)
    {
        var (found, days) = (0, 0L);
        for (var animal = 0; animal < herd.Count; animal++)
        {
            found += FoundOf(herd, expectation.Kind.Id, animal);
            days += CowDays(herd, expectation.Kind.Id, animal);
        }

        return (found, days / DaysInAYear);
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

    /// <summary>Days in the herd after her first calving on record, as far as they are promised.</summary>
    private static int CowDays(Herd herd, int kind, int animal)
    {
        if (herd.Vocabulary.Calving is not { } calving || herd.Sexes[animal] == Sex.Male)
        {
            return 0;
        }

        var calvings = herd.Runs[calving.Id].DaysOf(animal);
        var since = calvings.Length > 0 ? calvings[0] : herd.RecordedParity[animal] > 0 ? herd.Coverage.Joined[animal] : Day.End;
        var from = Math.Max(Math.Max(since, herd.Coverage.Since[kind]), herd.Coverage.Joined[animal]);
        var to = Math.Min(herd.Coverage.Reach[kind], herd.Coverage.Left[animal]);
        var days = Math.Max(0, to - from + 1);
        foreach (var hole in herd.Coverage.HolesOf(animal, kind))
        {
            days -= Math.Max(0, Math.Min(to, hole.To) - Math.Max(from, hole.From) + 1);
        }

        return Math.Max(0, days);
    }
}
