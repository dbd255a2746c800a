namespace Byrelaw.Reporting.Lists;

/// <summary>One thing to find out, for all the animals whose answer hangs on it.</summary>
/// <param name="What">The task, such as <c>get a pregnancy test result</c>.</param>
/// <param name="Who">In the yards, or a laboratory or time.</param>
/// <param name="Numbers">The animals, in order.</param>
/// <param name="Alone">How many of them need nothing else.</param>
/// <param name="By">The last day on which to begin, so that it is of use; for those who are to be asked about after the judging days only, from when.</param>
/// <param name="IsLater">Whether it is for those.</param>
/// <param name="From">The first day it may be dated, for the earliest of them; null for any.</param>
/// <param name="Where">Who can find out, in words.</param>
public sealed record FindOut(string What, SettledBy Who, IReadOnlyList<string> Numbers, int Alone, LocalDate By, bool IsLater, LocalDate? From, string Where)
{
    /// <summary>All that would settle an Ask of the list, or a Later that is to be asked about, while it can still be of use; what settles most first.</summary>
    public static IReadOnlyList<FindOut> Of(ListReport list)
    {
        var asked = list.List.Animals.Select(animal => new AnimalReport(list, animal)).SelectMany(report => report.ToAsk.Select(missing =>
            (report.Animal, Missing: missing, What: WhatFor(report.Animal, missing, list), By: report.IsAskedAfter ? report.AskedFor : report.LastDayFor(missing), IsLater: report.IsAskedAfter)));
        return [.. asked
            .GroupBy(one => (one.What, one.Missing.SettledBy, one.By, one.IsLater))
            .Select(group => Group(group.Key.What, group.Key.SettledBy, [.. group], list))
            .OrderBy(found => found.IsLater).ThenByDescending(found => found.Alone).ThenByDescending(found => found.Numbers.Count).ThenBy(found => found.By)
            .ThenBy(found => found.What, StringComparer.Ordinal)];
    }

    private static FindOut Group(string what, SettledBy who, List<(AnimalJudgement Animal, Missing Missing, string What, LocalDate By, bool IsLater)> group, ListReport list)
    {
        var animals = group.Select(one => one.Animal).Distinct().ToList();
        var alone = animals.Count(animal => IsEnough(new AnimalReport(list, animal), what));
        var first = group.Any(one => one.Missing.From is null) ? null : group.Min(one => one.Missing.From);
        return new FindOut(what, who, [.. animals.Select(animal => animal.Number)], alone, group[0].By, group[0].IsLater, first, MissingWords.Where(group[0].Missing));
    }

    /// <summary>Whether nothing else need be found out about her.</summary>
    private static bool IsEnough(AnimalReport report, string what) => report.Jobs is { Count: > 0 } jobs
        ? jobs.All(job => job.Ways.Any(way => way.All(missing => WhatFor(report.Animal, missing, report.On) == what)))
        : report.ToAsk.All(missing => WhatFor(report.Animal, missing, report.On) == what);

    /// <summary>Sampling a mob is one task for all its animals; the mob is named.</summary>
    private static string WhatFor(AnimalJudgement animal, Missing missing, ListReport list)
    {
        var task = MissingWords.TaskForMany(missing, list);
        var mob = missing.Reason == MissingReason.TooFewOfTheMob ? Particulars.Mob(new AnimalReport(list, animal)) : "";
        return mob.Length == 0 ? task : task.Replace("in her mob", $"in mob {mob}", StringComparison.Ordinal);
    }
}
