namespace Byrelaw.Reporting.Tests.Invented;

/// <summary>A herd in columns, written by hand: who there is, and a few events each.</summary>
internal sealed class InventedHerd(InventedWords words, Func<string, string> alter)
{
    private readonly List<(int Animal, Kind Kind, LocalDate Date, byte Answer)> _events = [];
    private readonly List<(string Number, LocalDate Born, Sex Sex)> _animals = [];

    public int Add(string number, LocalDate born, Sex sex = Sex.Female)
    {
        _animals.Add((number, born, sex));
        return _animals.Count - 1;
    }

    public void Event(int animal, Kind kind, LocalDate date, byte answer = 0) => _events.Add((animal, kind, date, answer));

    public Herd Make(ImmutableArray<Diagnostic> problems)
    {
        var count = _animals.Count;
        var kinds = words.Vocabulary.Kinds;
        var born = _animals.Select(animal => Day.Number(animal.Born)).ToArray();
        var starts = Enumerable.Range(0, count + 1).ToArray();
        return new Herd
        {
            Vocabulary = words.Vocabulary,
            Numbers = [.. _animals.Select(animal => alter(animal.Number))],
            Sexes = [.. _animals.Select(animal => animal.Sex)],
            BornEarliest = born,
            BornLatest = born,
            RecordedParity = [.. Enumerable.Repeat(3, count)],
            AnimalLines = [.. Enumerable.Range(2, count)],
            Facts = [new FactColumn { States = [.. Enumerable.Repeat(FactState.Known, count)], Texts = [.. _animals.Select((_, i) => alter($"55400070004{i:0000}"))] }],
            Runs = [.. kinds.Select(Run)],
            MobRuns = new MobRun?[kinds.Length],
            Mobs = new MobStays { Names = [alter("River"), alter("Hill")], Starts = starts, From = [.. Enumerable.Repeat(Day.Start, count)], Mob = [.. Enumerable.Range(0, count).Select(i => i % 2)], Lines = new int[count] },
            Membership = new Membership { Starts = starts, From = [.. Enumerable.Repeat(Day.Start, count)], States = [.. Enumerable.Repeat(Presence.In, count)], Lines = new int[count], Kinds = [.. Enumerable.Repeat(-1, count)], JoinedOnRecord = [.. Enumerable.Repeat(Day.Start, count)], LeftOnRecord = [.. Enumerable.Repeat(Day.End, count)] },
            Coverage = new Coverage
            {
                Since = [.. Enumerable.Repeat(Day.Number(new LocalDate(2024, 6, 1)), kinds.Length)],
                NeededFrom = [.. Enumerable.Repeat(born, kinds.Length)],
                Joined = [.. Enumerable.Repeat(Day.Start, count)],
                Left = [.. Enumerable.Repeat(Day.End, count)],
                KnownDay = Day.Number(InventedDraft.Known),
                Reach = [.. Enumerable.Repeat(Day.Number(InventedDraft.Known), kinds.Length)],
                Gaps = [],
                HasGaps = new bool[kinds.Length],
            },
            KnownDay = InventedDraft.Known,
            Problems = problems,
            Fingerprint = "sha256:" + new string('b', 64),
            AnimalsFile = alter("animals.csv"),
            EventsFile = alter("events.csv"),
        };
    }

    private KindRun Run(Kind kind)
    {
        var mine = _events.Where(one => one.Kind == kind).OrderBy(one => one.Animal).ThenBy(one => one.Date).ToList();
        return new KindRun
        {
            Starts = [.. Enumerable.Range(0, _animals.Count + 1).Select(animal => mine.Count(one => one.Animal < animal))],
            Days = [.. mine.Select(one => Day.Number(one.Date))],
            Lines = [.. mine.Select((_, i) => 100 + i)],
            Answers = kind is TestKind ? [.. mine.Select(one => one.Answer)] : [],
        };
    }
}
