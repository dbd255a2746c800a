namespace Byrelaw.Planning.LeadTimes;

/// <summary>An animal stands under the earliest session that a task serves, with the later ones for which it holds too.</summary>
internal static class EarliestSession
{
    /// <summary>One task in all sessions, each animal once.</summary>
    public static IEnumerable<TaskDates> Keep(ImmutableArray<TaskDates> sessions)
    {
        for (var i = 0; i < sessions.Length; i++)
        {
            ImmutableArray<AnimalInNeed> hers =
            [
                .. sessions[i].Animals.Where(animal => animal.Days.IsEmpty || !sessions.Take(i).Any(earlier => earlier.Animals.Any(other => IsSame(other, animal) && Common(other, animal).Any())))
                    .Select(animal => animal with { AlsoFor = [.. sessions.Skip(i + 1).SelectMany(later => Also(animal, later))] }),
            ];
            var last = hers.Where(animal => !animal.Days.IsEmpty).Select(animal => (LocalDate?)animal.Days[^1].End).Min();
            yield return sessions[i] with { Animals = hers, LastStart = last ?? sessions[i].LastStart };
        }
    }

    private static bool IsSame(AnimalInNeed one, AnimalInNeed other) => one.Number == other.Number && one.Subject == other.Subject && !one.Days.IsEmpty;

    /// <summary>The first days of the runs that both have; none where what is done for the one session does nothing for the other.</summary>
    private static IEnumerable<LocalDate> Common(AnimalInNeed one, AnimalInNeed other) =>
        one.Days.SelectMany(run => other.Days.Select(then => (From: LocalDate.Max(run.Start, then.Start), To: LocalDate.Min(run.End, then.End)))).Where(both => both.From <= both.To).Select(both => both.From);

    /// <summary>The first of her days that serves a later session too.</summary>
    private static IEnumerable<(int Session, LocalDate From)> Also(AnimalInNeed animal, TaskDates later) =>
        from other in later.Animals
        where IsSame(other, animal)
        let first = Common(animal, other).Select(day => (LocalDate?)day).FirstOrDefault()
        where first is not null
        select (later.Session, first.Value);
}
