namespace Byrelaw.Records.Building;

/// <summary>Services, embryos and bulls that a calf may be of: 200 to 320 days before it. Common practice, no source.</summary>
internal sealed class CalvesFathers
{
    private const int Nearest = 200;
    private const int Farthest = 320;
    private static readonly string[] Names = ["mating", "transfer"];

    private readonly (int Animal, int Day)[] _services;
    private readonly ILookup<int, (int Day, bool IsEnd)>[] _bulls;

    /// <summary>Of what was read.</summary>
    public CalvesFathers(Vocabulary vocabulary, IReadOnlyList<EventStage> stages)
    {
        _services = [.. Services(vocabulary).SelectMany(kind => Rows(stages, kind))];
        Array.Sort(_services);
        _bulls = [.. vocabulary.Spells.Where(spell => spell.WithMaleFrom is not null).Select(spell =>
            Rows(stages, spell.From).Select(row => (row.Animal, row.Day, IsEnd: false))
                .Concat(Rows(stages, spell.Until).Select(row => (row.Animal, row.Day, IsEnd: true)))
                .ToLookup(row => row.Animal, row => (row.Day, row.IsEnd)))];
    }

    /// <summary>What puts a calf into a cow on one day.</summary>
    public static IEnumerable<EventKind> Services(Vocabulary vocabulary) => Names.Select(vocabulary.FindKind).OfType<EventKind>();

    /// <summary>Whether any is on record.</summary>
    public bool Are(int animal, int day)
    {
        var (first, last) = (day - Farthest, day - Nearest);
        return Served(animal, first, last) || Array.Exists(_bulls, bull => RanWith(bull[animal], first, last));
    }

    /// <summary>Whether a service or an embryo of hers is on record on one of these days.</summary>
    public bool Served(int animal, int first, int last)
    {
        var at = Array.BinarySearch(_services, (animal, first));
        var next = at < 0 ? ~at : at;
        return next < _services.Length && _services[next].Animal == animal && _services[next].Day <= last;
    }

    private static bool RanWith(IEnumerable<(int Day, bool IsEnd)> rows, int first, int last) => rows.Any(start =>
        !start.IsEnd && start.Day <= last && (start.Day >= first || !rows.Any(end => end.IsEnd && end.Day >= start.Day && end.Day < first)));

    private static IEnumerable<(int Animal, int Day)> Rows(IReadOnlyList<EventStage> stages, EventKind kind) =>
        stages.SelectMany(stage => stage.Events[kind.Id].All()).Where(row => row.Animal != Staged<Nothing>.TakenOut).Select(row => (row.Animal, row.Day));
}
