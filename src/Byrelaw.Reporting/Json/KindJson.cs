namespace Byrelaw.Reporting.Json;

/// <summary>What is on record of a kind, for programs: how many entries, from when to when, and what is promised of it.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Rows">Entries of animals, and samples of mobs.</param>
/// <param name="First">The day of the first; null where there is none.</param>
/// <param name="Last">The day of the last.</param>
/// <param name="CompleteSince">The first day from which all is promised and believed to be on record; null where that is not so.</param>
public sealed record KindJson(string Kind, int Rows, string? First, string? Last, string? CompleteSince)
{
    /// <summary>All kinds of which something is on record or promised.</summary>
    internal static IEnumerable<KindJson> Of(Herd herd)
    {
        foreach (var kind in herd.Vocabulary.Kinds)
        {
            int[] days = [.. herd.Runs[kind.Id].Days, .. herd.MobRuns[kind.Id]?.Days ?? []];
            var since = herd.Coverage.Since[kind.Id];
            if (days.Length > 0 || since != Day.End)
            {
                yield return new KindJson(kind.Name, days.Length, days.Length == 0 ? null : Iso(days.Min()), days.Length == 0 ? null : Iso(days.Max()), since is Day.End or Day.Start ? null : Iso(since));
            }
        }
    }

    private static string Iso(int day) => LocalDatePattern.Iso.Format(Day.Date(day));
}
