namespace Byrelaw.Reporting.Json;

/// <summary>A promise of one kind, for programs.</summary>
/// <param name="Kind">Its name.</param>
/// <param name="Since">The first day; null where sheets promise it of each animal since her last entry only.</param>
/// <param name="Reaches">The last day that it covers; null where no record has a day.</param>
/// <param name="Counts">Whether it is believed.</param>
public sealed record PromisedKindJson(string Kind, string? Since, string? Reaches, bool Counts)
{
    internal static IEnumerable<PromisedKindJson> Of(Herd herd)
    {
        var coverage = herd.Coverage;
        foreach (var kind in herd.Vocabulary.Kinds)
        {
            var setAside = coverage.SetAside.Length == 0 ? Day.End : coverage.SetAside[kind.Id];
            if (Math.Min(coverage.Since[kind.Id], setAside) < Day.End)
            {
                var counts = coverage.Since[kind.Id] < Day.End;
                var reach = Math.Min(coverage.Reach[kind.Id], coverage.KnownDay);
                yield return new PromisedKindJson(kind.Name, coverage.IsSinceHerLast(kind.Id) ? null : Iso(counts ? coverage.Since[kind.Id] : setAside), reach <= Day.Start ? null : Iso(reach), counts);
            }
        }
    }

    private static string? Iso(int day) => day is <= Day.Start or >= Day.End ? null : NodaTime.Text.LocalDatePattern.Iso.Format(Day.Date(day));
}
