namespace Byrelaw.Reporting.Explaining;

/// <summary>An animal's story up to the judging days, in one line: calved, last heat, last served, last transfer, checked, last ill, and a device that is in.</summary>
public static class Story
{
    private const string Calving = "calving";
    private static readonly (string Kind, string Said)[] Milestones = [("heat", "heat"), ("mating", "served"), ("transfer", "transfer")];

    /// <summary>The parts of the line, each a few words.</summary>
    /// <param name="report">The animal.</param>
    /// <param name="sinceCalved">Whether an illness from before her last calving is left out.</param>
    public static IReadOnlyList<string> Of(AnimalReport report, bool sinceCalved = false)
    {
        var (list, herd, animal) = (report.On, report.On.Herd, report.Animal.Animal);
        var parts = new List<string>();
        var until = Until(list);
        var calved = LastDay(herd, herd.Vocabulary.FindKind(Calving), animal, until);
        if (calved is { } day)
        {
            parts.Add($"calved {list.Short(Day.Date(day))}");
        }
        else if (herd.BornEarliest[animal] is var born and not Day.Start && born == herd.BornLatest[animal])
        {
            parts.Add($"born {list.Short(Day.Date(born))}");
        }

        foreach (var (name, said) in Milestones)
        {
            if (herd.Vocabulary.FindKind(name) is { } kind)
            {
                parts.Add(Milestone(list, kind, said, animal, calved));
            }
        }

        parts.AddRange(Checks(report, calved ?? Day.Start).Take(2));
        if (LastAgainst(report, sinceCalved ? calved ?? Day.Start : Day.Start) is { } ill)
        {
            parts.Add(ill);
        }

        if (list.DevicesIn.TryGetValue(animal, out var since))
        {
            parts.Add($"device in since {list.Short(since)}");
        }

        return parts;
    }

    private static string Milestone(ListReport list, Kind kind, string said, int animal, int? calved)
    {
        var herd = list.Herd;
        var until = Until(list);
        var last = LastDay(herd, kind, animal, until);
        if (last is { } day && (calved is null || day >= calved))
        {
            return $"{said} {list.Short(Day.Date(day))}";
        }

        var from = calved ?? Day.Start;
        var known = herd.Coverage.Covers(animal, kind.Id, from, Math.Min(until, herd.Coverage.KnownDay), strict: true);
        var since = calved is null ? "" : " since";
        return said == "served"
            ? known ? $"not served{since}" : $"no service on record{since}"
            : known ? $"no {said}{since}" : $"no {said} on record{since}";
    }

    /// <summary>What a hand or an eye has seen since she calved, where the list's rules ask for it; the newest first.</summary>
    private static IEnumerable<string> Checks(AnimalReport report, int since)
    {
        var herd = report.On.Herd;
        return report.On.Kinds.OfType<TestKind>()
            .Select(kind => (Kind: kind, Place: LastPlace(herd, kind, report.Animal.Animal, Until(report.On))))
            .Where(found => found.Kind.InTheYards && found.Place >= 0 && herd.Runs[found.Kind.Id].Days[found.Place] >= since)
            .OrderByDescending(found => herd.Runs[found.Kind.Id].Days[found.Place])
            .Select(found =>
            {
                var run = herd.Runs[found.Kind.Id];
                var answer = run.Answers[found.Place];
                var said = answer < found.Kind.Answers.Length ? found.Kind.Answers[answer] : "result not known";
                return $"{found.Kind.Name} {said} {report.On.Short(Day.Date(run.Days[found.Place]))}";
            });
    }

    /// <summary>The latest event since a day that some rule of the list wants not to have happened, apart from those told already.</summary>
    private static string? LastAgainst(AnimalReport report, int since)
    {
        var herd = report.On.Herd;
        var found = report.On.UnwantedKinds
            .Where(kind => kind.Name != Calving && Milestones.All(milestone => milestone.Kind != kind.Name))
            .Select(kind => (kind.Name, Day: LastDay(herd, kind, report.Animal.Animal, Until(report.On))))
            .Where(found => found.Day >= since).OrderByDescending(found => found.Day).FirstOrDefault();
        return found.Day is { } day ? $"{found.Name} {report.On.Short(Day.Date(day))}" : null;
    }

    /// <summary>What happens after the judging days is not yet her story on them.</summary>
    private static int Until(ListReport list) => Day.Number(list.List.Choice.JudgedTo);

    private static int? LastDay(Herd herd, Kind? kind, int animal, int until) =>
        kind is not null && LastPlace(herd, kind, animal, until) is var place and >= 0 ? herd.Runs[kind.Id].Days[place] : null;

    private static int LastPlace(Herd herd, Kind kind, int animal, int until)
    {
        var run = herd.Runs[kind.Id];
        var place = run.Starts[animal + 1] - 1;
        while (place >= run.Starts[animal] && run.Days[place] > until)
        {
            place--;
        }

        return place >= run.Starts[animal] ? place : -1;
    }
}
