using Byrelaw.Judging.Tests.Reference;

namespace Byrelaw.Judging.Tests.Generators;

/// <summary>Farms of one to eight animals, as rows of text.</summary>
public static class GenFarms
{
    public static readonly decimal[] Weights = [300m, 330m, 330.3m, 349.5m, 400m, 500m, 550.5m];
    public static readonly decimal[] Scores = [1m, 3.5m, 4m, 4.5m, 4.6m, 5.5m, 5.7m, 10m];
    public static readonly decimal[] Coppers = [3m, 6.9m, 7m, 7.5m, 10m, 12m];

    private static readonly string[] ResultKinds = ["weight", "body condition", "serum copper", "BVD virus", "uterine check"];
    private static readonly string[] AllNumbers = ["7", "12", "101", "B2", "B12", "9", "450", "1423"];

    public static readonly ImmutableArray<string> FactNames = [.. Words.Vocabulary.Facts.Select(fact => fact.Name)];

    public static Gen<PlainFarm> For(Season season, bool tidy = false) =>
        from count in Gen.Frequency((4, Gen.Int[1, 3]), (1, Gen.Int[4, 8]))
        from animals in InTurn(AllNumbers.Take(count).Select(number => Animal(season, number, tidy)))
        from lost in Gen.Frequency((6, Gen.Const(-1)), (tidy ? 0 : 1, Gen.Int[0, FactNames.Length - 1]))
        from rows in Gen.Int[0, 6 * count].SelectMany(rows => Row(season, [.. animals.Select(animal => animal.Number)], tidy).Array[rows])
        from again in Again(rows, tidy)
        select new PlainFarm(lost < 0 ? FactNames : FactNames.SetItem(lost, "no such fact"), animals, [.. rows.Except(rows.Where(IsGroupMove).Skip(AnyMayBeOne(animals) ? 0 : 1)), .. again]);

    /// <summary>Now and then a second result of one day, and another one: measured twice, or two samples.</summary>
    private static Gen<ImmutableArray<EventRow>> Again(EventRow[] rows, bool tidy)
    {
        ImmutableArray<EventRow> results = [.. rows.Where(row => ResultKinds.Contains(row.Kind))];
        if (results.IsEmpty)
        {
            return Gen.Const(ImmutableArray<EventRow>.Empty);
        }

        var again = Gen.OneOf([.. results]).SelectMany(
            row => OfKind(row.Kind, tidy).Select(other => other with { Date = row.Date, Animal = row.Animal, Recorded = row.Recorded }));
        return Gen.Frequency((1, Gen.Const(0)), (1, Gen.Int[1, 3])).SelectMany(count => again.Array[count]).Select(more => more.ToImmutableArray());
    }

    private static Gen<EventRow> OfKind(string kind, bool tidy) => kind switch
    {
        "weight" => Weight(tidy),
        "body condition" => Score(tidy),
        "serum copper" => Copper(tidy),
        "BVD virus" => Virus(tidy),
        "uterine check" => Uterus(tidy),
        _ => throw new ArgumentException($"no results of {kind} are drawn", nameof(kind)),
    };

    /// <summary>Whether two have one official identity, and so may be one animal. Where a whole mob moves besides, the reference lays the one doubt
    /// over the other more than once, and so doubts more than is asked.</summary>
    private static bool AnyMayBeOne(ImmutableArray<AnimalRow> animals)
    {
        var identities = animals.SelectMany(animal => Words.Vocabulary.Facts.Where(fact => fact.Type == FactType.Identity).Select(fact => animal.Facts[fact.Id]))
            .Where(identity => identity.Length > 0).ToList();
        return identities.Distinct().Count() < identities.Count;
    }

    /// <summary>Where whole mobs move one after another, the reference, which looks at single animals first, does not follow.</summary>
    private static bool IsGroupMove(EventRow row) => row.Kind == "mob" && (row.Animal == "herd" || row.Animal.StartsWith("mob:", StringComparison.Ordinal));

    /// <summary>Kinds of which <see cref="Lately"/> makes rows.</summary>
    public static readonly EventKind[] LateKinds = [Words.Heat, Words.Mating, Words.Mastitis];

    /// <summary>Rows of few kinds in the last six weeks that are on record.</summary>
    public static Gen<ImmutableArray<EventRow>> Lately(Season season, ImmutableArray<string> numbers)
    {
        var row =
            from animal in Gen.OneOf([.. numbers])
            from kind in Gen.OneOf(LateKinds)
            from ago in Gen.Int[0, 42]
            select new EventRow(Text(season.Known.PlusDays(-ago)), animal, kind.Name);
        return row.Array[4 * numbers.Length].Select(rows => rows.ToImmutableArray());
    }

    /// <summary>The same farm with details of what is on record; now and then a second row of one day that says otherwise, or a column that is not there.</summary>
    /// <param name="farm">Without details.</param>
    /// <param name="tidy">Whether every detail can be read.</param>
    public static Gen<PlainFarm> WithDetails(PlainFarm farm, bool tidy)
    {
        var cells = Gen.Select(
            Gen.Frequency((4, Gen.OneOf("natural", "inseminated", "ear", "blood")), (2, Gen.Const("")), (tidy ? 0 : 1, Gen.Const("by air"))),
            Gen.Frequency((6, Gen.OneOf("Bull A", "bull a", "north", "Bull B")), (4, Gen.Const("")), (tidy ? 0 : 1, Gen.OneOf("?", "unknown", "Bull A?"))),
            Gen.Frequency((3, Gen.OneOf("own", "treatment")), (2, Gen.Const("")), (tidy ? 0 : 1, Gen.Const("moon"))),
            Gen.Frequency((4, Gen.OneOf("0", "1", "2", "2.5", "3")), (2, Gen.Const("")), (tidy ? 0 : 1, Gen.Const("two"))),
            (method, sire, cause, step) => ImmutableArray.Create(method, sire, cause, step));
        return
            from lost in Gen.Frequency((8, Gen.Const(-1)), (1, Gen.Int[0, 3]), (1, Gen.Int[4, 7]))
            from again in Gen.Frequency((2, Gen.Const(0)), (1, Gen.Const(1))).Array[farm.Events.Length]
            let rows = farm.Events.SelectMany((row, place) => Enumerable.Repeat(row, 1 + again[place])).ToList()
            from details in cells.Array[rows.Count]
            select farm with
            {
                // A column under a name that nobody knows, or none at all.
                DetailNames = lost < 0 ? FilteredWords.Columns : lost < 4 ? FilteredWords.Columns.SetItem(lost, "no such detail") : FilteredWords.Columns.RemoveAt(lost - 4),
                Events = [.. rows.Select((row, place) => row with { Details = Fitting(row.Kind, lost < 4 ? details[place] : details[place].RemoveAt(lost - 4)) })],
            };
    }

    /// <summary>What stands under `method` is of another sort for a mating than for a test; a kind without details has none.</summary>
    private static ImmutableArray<string> Fitting(string kind, ImmutableArray<string> cells) => kind switch
    {
        "BVD virus" => [.. cells.Select(cell => cell switch { "natural" => "ear", "inseminated" => "blood", _ => OfSires.Contains(cell) ? "" : cell })],
        "mating" => [.. cells.Select(cell => cell switch { "ear" => "natural", "blood" => "inseminated", _ => cell })],
        "weight" or "serum copper" => [.. cells.Select(cell => cell is "natural" or "inseminated" or "by air" ? "" : cell)],
        // A way to serve or a sire beside anything else may tell of a service, which is another test's.
        _ => [.. cells.Select(cell => OfServices.Contains(cell) ? "" : cell)],
    };

    /// <summary>Whether nobody has more calvings than her age allows: where all of them are promised that is a contradiction, and then whether she is a cow is not known, which was known before.</summary>
    public static bool HasOnlyPossibleParities(PlainFarm farm)
    {
        var last = farm.Events.Select(row => LocalDatePattern.Iso.Parse(row.Date)).Where(day => day.Success).Select(day => day.Value).Append(new LocalDate(2020, 1, 1)).Max();
        return !farm.Animals.Any(animal => LocalDatePattern.Iso.Parse(animal.Born) is { Success: true, Value: var born }
            && int.TryParse(animal.Parity, CultureInfo.InvariantCulture, out var parity) && parity > 0 && born.PlusMonths(15 + (10 * (parity - 1))) > last);
    }

    private static readonly string[] OfSires = ["Bull A", "bull a", "north", "Bull B", "?", "unknown", "Bull A?"];
    private static readonly string[] OfServices = ["natural", "inseminated", "by air", .. OfSires];

    /// <summary>Whether no calving is on record so soon after a service of hers that one of the two rows must be wrong: then whether she calved is not known, whatever else is on record.</summary>
    public static bool HasOnlyLikelyCalvings(PlainFarm farm)
    {
        var rows = farm.Events.Select(row => (row.Animal, row.Kind, Day: LocalDatePattern.Iso.Parse(row.Date))).Where(row => row.Day.Success).ToList();
        return !rows.Exists(calving => calving.Kind == "calving" && rows.Exists(other => other.Kind is "mating" or "calving" && other.Animal == calving.Animal
            && Period.DaysBetween(other.Day.Value, calving.Day.Value) is > 0 and < 200));
    }

    /// <summary>Rows of bulls, of their mobs and of the herd, and moves of single animals, in the last year.</summary>
    public static Gen<ImmutableArray<EventRow>> OfBulls(Season season, ImmutableArray<string> numbers)
    {
        var row =
            from whom in Gen.Frequency((4, Gen.OneOf([.. numbers])), (3, Gen.OneOf("mob:Home", "mob:Back")), (1, Gen.Const("herd")), (1, Gen.Const("9999")))
            from kind in Gen.OneOf("bull in", "bull in", "bull out", "mob")
            from mob in Gen.OneOf("Home", "Back", "Bulls")
            from date in season.Past
            let isMove = kind == "mob" && (numbers.Contains(whom) || whom == "9999")
            select new EventRow(Text(date), whom, isMove ? "mob" : kind == "mob" ? "bull out" : kind, isMove ? mob : "");
        return row.Array[0, 4 * numbers.Length].Select(rows => rows.ToImmutableArray());
    }

    private static Gen<AnimalRow> Animal(Season season, string number, bool tidy)
    {
        var born = Gen.Frequency(
            (12, season.Birth.Select(Text)),
            (tidy ? 0 : 1, season.Birth.Select(date => Text(date)[..7])),
            (tidy ? 0 : 1, season.Birth.Select(date => Text(date)[..4])),
            (tidy ? 0 : 1, Gen.OneOf("", "spring")));
        return
            from birth in born
            from sex in Gen.Frequency((17, Gen.Const("F")), (3, Gen.Const("M")), (1, Gen.Const("steer")), (tidy ? 0 : 1, Gen.OneOf("", "cow")))
            from mob in Gen.Frequency((3, Gen.OneOf("Home", "Back")), (1, Gen.Const("")))
            from parity in Gen.Frequency((6, Gen.Const("")), (3, Gen.OneOf("0", "1", "2", "3")), (tidy ? 0 : 1, Gen.OneOf("two", "-1")))
            from parityOn in Gen.Frequency((4, Gen.Const("")), (2, season.Past.Select(Text)), (tidy ? 0 : 1, Gen.OneOf("spring", Text(season.Known.PlusDays(9)))))
            from facts in InTurn(Words.Vocabulary.Facts.Select(fact => FactCell(season, fact, tidy)))
            select new AnimalRow(number, birth, sex, mob, parity, facts, parityOn);
    }

    private static Gen<string> FactCell(Season season, Fact fact, bool tidy)
    {
        var good = fact.Type switch
        {
            FactType.OneOf => Gen.OneOf("Friesian", "Jersey", "crossbred", "JERSEY"),
            FactType.Number => Gen.OneOf("90", "100", "110.5", "120", "130"),
            FactType.Amount => Gen.OneOf("500", "550", "550.5", "600"),
            FactType.Date => Gen.OneOf(Text(season.Collection), "2023-02-01", "2022-07-07"),
            // Now and then two animals have one, as if they were one animal under two numbers.
            FactType.Identity => Gen.Int[1, tidy ? 1_000_000 : 30].Select(tag => string.Create(CultureInfo.InvariantCulture, $"UK 123456 7{tag:000000}")),
            _ => Gen.OneOf("quiet", "wild"),
        };
        var bad = fact.Type is FactType.Text or FactType.Identity ? Gen.Const("") : Gen.Const("n/a");
        return Gen.Frequency((8, good), (2, Gen.Const("")), (tidy ? 0 : 1, bad));
    }

    private static Gen<EventRow> Row(Season season, ImmutableArray<string> numbers, bool tidy)
    {
        var sound =
            from date in season.Past
            from whom in Gen.Frequency((20, Gen.OneOf([.. numbers])), (2, Gen.OneOf("mob:Home", "mob:Back")), (1, Gen.Const("herd")))
            from row in Content(whom, tidy)
            from entered in Gen.Frequency((6, Gen.Const(-1)), (1, Gen.Int[0, 20]))
            select row with { Date = Text(date), Recorded = entered < 0 ? "" : Text(Sooner(date.PlusDays(entered), season.Known)) };
        return tidy ? sound : Gen.Frequency((14, sound), (1, sound.SelectMany(row => Garbled(season, row))));
    }

    private static Gen<EventRow> Content(string whom, bool tidy)
    {
        var isGroup = whom == "herd" || whom.StartsWith("mob:", StringComparison.Ordinal);
        var plain = Gen.Frequency(
            (4, Gen.OneOf("calving", "heat", "mating", "mastitis")), (isGroup ? 6 : 2, Gen.OneOf("bull in", "bull out")),
            (isGroup ? 0 : 1, Gen.OneOf("purchase", "sale", "death", "sale"))).Select(kind => new EventRow("", whom, kind));
        var move = Gen.OneOf("Home", "Back").Select(mob => new EventRow("", whom, "mob", mob));
        return Gen.Frequency(
            (6, plain),
            (1, move),
            (3, Result(tidy).Select(row => row with { Animal = whom })),
            (2, Answer(tidy).Select(row => row with { Animal = whom })));
    }

    private static Gen<EventRow> Result(bool tidy) => Gen.Frequency((4, Weight(tidy)), (4, Score(tidy)), (4, Copper(tidy)));

    private static Gen<EventRow> Weight(bool tidy) => Gen.Frequency(
        (3, Amount(Weights, tidy).Select(value => new EventRow("", "", "weight", value, "kg"))),
        (1, Gen.OneOf(Weights).Select(value => new EventRow("", "", "weight", (value * 1000).ToString("0", CultureInfo.InvariantCulture), "g"))));

    private static Gen<EventRow> Score(bool tidy) => Amount(Scores, tidy).Select(value => new EventRow("", "", "body condition", value));

    private static Gen<EventRow> Copper(bool tidy) => Amount(Coppers, tidy).Select(value => new EventRow("", "", "serum copper", value, "umol/L"));

    private static Gen<string> Amount(decimal[] values, bool tidy)
    {
        var value = Gen.OneOf(values).Select(number => number.ToString(CultureInfo.InvariantCulture));
        return Gen.Frequency(
            (10, value),
            (tidy ? 0 : 1, value.Where(number => number != "1").Select(number => "<" + number)),
            (tidy ? 0 : 1, value.Where(number => number != "10").Select(number => ">" + number)),
            (tidy ? 0 : 1, Gen.OneOf("", "pending")));
    }

    private static Gen<EventRow> Answer(bool tidy) => Gen.OneOf(Virus(tidy), Uterus(tidy));

    private static Gen<EventRow> Virus(bool tidy) =>
        Gen.Frequency((6, Gen.OneOf("positive", "negative", "negative", "suspect")), (tidy ? 0 : 1, Gen.OneOf("pending", "", "haemolysed")))
            .Select(answer => new EventRow("", "", "BVD virus", answer));

    private static Gen<EventRow> Uterus(bool tidy) =>
        Gen.Frequency((6, Gen.OneOf("clean", "discharge")), (tidy ? 0 : 1, Gen.OneOf("pending", "sore")))
            .Select(answer => new EventRow("", "", "uterine check", answer));

    /// <summary>One cell of a row made unreadable.</summary>
    public static Gen<EventRow> Garbled(Season season, EventRow row) => Gen.Frequency(
        (3, Gen.OneOf("", "3 May", "2026-13-01", Text(season.Known.PlusDays(5)), Text(season.Known.PlusYears(2))).Select(date => row with { Date = date, Recorded = "" })),
        (3, Gen.OneOf("", "9999", "mob:Nowhere").Select(animal => row with { Animal = animal })),
        (2, Gen.OneOf("", "hiccup").Select(kind => row with { Kind = kind })),
        (1, Gen.Const(row with { Kind = "foot trim" })),
        (3, Gen.Const(row.Kind is "weight" or "body condition" or "serum copper" or "mob" ? row with { Value = row.Kind == "mob" ? "" : "4,x" } : row with { Date = "" })));

    private static Gen<ImmutableArray<T>> InTurn<T>(IEnumerable<Gen<T>> each) =>
        each.Aggregate(Gen.Const(ImmutableArray<T>.Empty), (before, one) => Gen.Select(before, one, (values, value) => values.Add(value)));

    private static LocalDate Sooner(LocalDate a, LocalDate b) => a < b ? a : b;

    private static string Text(LocalDate date) => LocalDatePattern.Iso.Format(date);
}
