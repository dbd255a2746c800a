using NodaTime;

namespace Byrelaw.Benchmarks;

/// <summary>
/// A herd made up for measuring: 24 events an animal over two years on average, spread over twelve kinds as a
/// dairy farm's records are, everything on record. The same seed makes the same herd.
/// </summary>
internal static class MadeUpHerd
{
    public static readonly LocalDate Known = new(2026, 9, 20);

    public static readonly Vocabulary Words = MakeWords();

    private static readonly (string Kind, int Count)[] Load =
    [
        ("calving", 2), ("heat", 6), ("mating", 2), ("transfer", 1), ("mastitis", 1), ("metritis", 1),
        ("lameness", 1), ("vaccination", 2), ("body condition", 4), ("BVD virus", 1), ("uterine check", 1), ("pregnancy test", 2),
    ];

    public static Herd Of(int count)
    {
        var random = new Random(20260920);
        var known = Day.Number(Known);
        var born = new int[count];
        for (var animal = 0; animal < count; animal++)
        {
            born[animal] = known - random.Next(1100, 3600);
        }

        var runs = new KindRun[Words.Kinds.Length];
        foreach (var kind in Words.Kinds)
        {
            var perAnimal = Load.FirstOrDefault(load => load.Kind == kind.Name).Count;
            runs[kind.Id] = MakeRun(kind, count, perAnimal, known, random);
        }

        var since = Enumerable.Repeat(known - 4000, Words.Kinds.Length).ToArray();
        var never = Enumerable.Repeat(Day.Start, count).ToArray();
        return new Herd
        {
            Vocabulary = Words,
            Numbers = [.. Enumerable.Range(1, count).Select(number => number.ToString(System.Globalization.CultureInfo.InvariantCulture))],
            Sexes = [.. Enumerable.Repeat(Sex.Female, count)],
            BornEarliest = born,
            BornLatest = born,
            RecordedParity = [.. Enumerable.Repeat(-1, count)],
            AnimalLines = [.. Enumerable.Range(2, count)],
            Facts = [],
            Runs = runs,
            MobRuns = new MobRun?[Words.Kinds.Length],
            Mobs = new MobStays { Names = [], Starts = new int[count + 1], From = [], Mob = [], Lines = [] },
            Membership = new Membership
            {
                Starts = [.. Enumerable.Range(0, count + 1)],
                From = never,
                States = [.. Enumerable.Repeat(Presence.In, count)],
                Lines = new int[count],
                Kinds = new int[count],
                JoinedOnRecord = never,
                LeftOnRecord = [.. Enumerable.Repeat(Day.End, count)],
            },
            Coverage = new Coverage
            {
                Since = since,
                NeededFrom = [.. Words.Kinds.Select(_ => born)],
                Joined = never,
                Left = [.. Enumerable.Repeat(Day.End, count)],
                KnownDay = known,
                Reach = [.. Enumerable.Repeat(known, Words.Kinds.Length)],
                Gaps = [],
                HasGaps = new bool[Words.Kinds.Length],
            },
            KnownDay = Known,
            Problems = [],
            Fingerprint = "made up",
        };
    }

    private static KindRun MakeRun(Kind kind, int count, int perAnimal, int known, Random random)
    {
        var starts = new int[count + 1];
        var days = new List<int>(count * perAnimal);
        var own = new List<int>();
        for (var animal = 0; animal < count; animal++)
        {
            // Some have none, some twice as many as others; no two on one day, where results could contradict each other.
            own.Clear();
            var most = random.Next((perAnimal * 2) + 1);
            for (var i = 0; i < most; i++)
            {
                own.Add(known - (random.Next(0, 730 / most) * most) - i);
            }

            own.Sort();
            days.AddRange(own);
            starts[animal + 1] = days.Count;
        }

        var size = days.Count;
        var scores = kind is MeasureKind ? Scores(size, random) : [];
        return new KindRun
        {
            Starts = starts,
            Days = [.. days],
            Lines = [.. Enumerable.Range(2, size)],
            Low = scores,
            High = scores,
            Answers = kind is TestKind ? [.. Enumerable.Range(0, size).Select(_ => (byte)(random.Next(10) == 0 ? 0 : 1))] : [],
        };
    }

    private static double[] Scores(int size, Random random) =>
        [.. Enumerable.Range(0, size).Select(_ => 3.5 + (random.Next(0, 5) * 0.5))];

    private static Vocabulary MakeWords()
    {
        var span = new SourceSpan(new SourceFile("made-up.byre", "-"), 0, 1);
        var id = 0;
        List<Kind> kinds = [new EventKind("mob", [], span) { Id = id++, IsMobMove = true }];
        foreach (var name in new[] { "calving", "heat", "mating", "transfer", "mastitis", "metritis", "lameness", "vaccination" })
        {
            kinds.Add(new EventKind(name, [], span) { Id = id++ });
        }

        kinds.Add(new MeasureKind("body condition", [], span) { Id = id++, Scale = new Scale(1, 10), InTheYards = true });
        kinds.Add(new TestKind("BVD virus", [], span) { Id = id++, Answers = ["positive", "negative"] });
        kinds.Add(new TestKind("uterine check", [], span) { Id = id++, Answers = ["discharge", "clean"] });
        kinds.Add(new TestKind("pregnancy test", [], span) { Id = id++, Answers = ["pregnant", "empty"] });
        return new Vocabulary([.. kinds], [], []);
    }
}
