namespace Byrelaw.Reporting.Json;

/// <summary>How much records hold, and how much of it cannot be read, for programs.</summary>
/// <param name="Females">Animals.</param>
/// <param name="Males">Bulls and steers.</param>
/// <param name="SexNotKnown">Animals whose sex is not on record, or cannot be read.</param>
/// <param name="InHerd">Animals that are surely in the herd on the day the records reach.</param>
/// <param name="Errors">Problems that put something in doubt.</param>
/// <param name="Warnings">Problems that do not.</param>
public sealed record RecordCountsJson(int Females, int Males, int SexNotKnown, int InHerd, int Errors, int Warnings)
{
    internal static RecordCountsJson Of(Herd herd, IEnumerable<Diagnostic> problems)
    {
        var (females, males) = (herd.Sexes.Count(sex => sex == Sex.Female), herd.Sexes.Count(sex => sex is Sex.Male or Sex.Steer));
        var errors = problems.Count(problem => problem.Severity == Severity.Error);
        return new RecordCountsJson(
            females, males, herd.Count - females - males, Enumerable.Range(0, herd.Count).Count(animal => herd.Membership.At(animal, herd.Coverage.KnownDay) == Presence.In), errors, problems.Count() - errors);
    }
}

/// <summary>A promise of one kind, for programs.</summary>
/// <param name="Kind">Its name.</param>
/// <param name="Since">The first day; null where sheets promise it of each animal since her last entry only.</param>
/// <param name="Reaches">The last day that it covers; null where no record has a day.</param>
/// <param name="Counts">Whether it is believed.</param>
public sealed record PromiseJson(string Kind, string? Since, string? Reaches, bool Counts)
{
    internal static IEnumerable<PromiseJson> Of(Herd herd)
    {
        var coverage = herd.Coverage;
        foreach (var kind in herd.Vocabulary.Kinds)
        {
            var setAside = coverage.SetAside.Length == 0 ? Day.End : coverage.SetAside[kind.Id];
            if (Math.Min(coverage.Since[kind.Id], setAside) < Day.End)
            {
                var counts = coverage.Since[kind.Id] < Day.End;
                var reach = Math.Min(coverage.Reach[kind.Id], coverage.KnownDay);
                yield return new PromiseJson(kind.Name, coverage.IsSinceHerLast(kind.Id) ? null : Iso(counts ? coverage.Since[kind.Id] : setAside), reach <= Day.Start ? null : Iso(reach), counts);
            }
        }
    }

    private static string? Iso(int day) => day is <= Day.Start or >= Day.End ? null : NodaTime.Text.LocalDatePattern.Iso.Format(Day.Date(day));
}
