using Byrelaw.Judging.Tests.Reference;

namespace Byrelaw.Judging.Tests.Generators;

/// <summary>Records of a few cows about which the floor has something to say: services, embryos, bulls, scans late enough or a day too early.</summary>
public static class GenFloorRecords
{
    private static readonly int[] Borders = [0, 1, 26, 27, 28, 29, 34, 35, 36, 41, 42, 43, 60, 149, 150, 151, 283];

    public static Gen<PlainFarm> For(Season season, FloorWordsDrawn words, bool tidy) =>
        from count in Gen.Int[1, 3]
        from bull in Gen.Frequency((4, Gen.Const(false)), (1, Gen.Const(true)))
        let numbers = (ImmutableArray<string>)[.. new[] { "7", "12", "101" }.Take(count), .. bull ? new[] { "B2" } : []]
        from animals in InTurn(numbers.Select(number => Animal(season, number, tidy)))
        from rows in Gen.Int[0, 5 * count].SelectMany(many => Row(season, words, numbers, tidy).Array[many])
        from scans in Scans(words, rows, tidy)
        from garbled in Gen.Frequency((tidy ? 1 : 4, Gen.Const(false)), (tidy ? 0 : 1, Gen.Const(true)))
        from all in garbled && rows.Length > 0 ? OneGarbled([.. rows, .. scans]) : Gen.Const((ImmutableArray<EventRow>)[.. rows, .. scans])
        select new PlainFarm(["origin"], animals, [.. all.Where(row => row.Date.Length == 0 || string.CompareOrdinal(row.Date, Text(season.Known)) <= 0 || !tidy)]);

    private static Gen<AnimalRow> Animal(Season season, string number, bool tidy) =>
        from age in Gen.Int[930, 1300]
        let birth = Text(season.Known.PlusDays(-age))
        from born in Gen.Frequency((8, Gen.Const(birth)), (tidy ? 0 : 1, Gen.OneOf("", birth[..4], birth[..7])))
        from mob in Gen.OneOf("Home", "Home", "Back", "")
        from parity in Gen.Frequency((6, Gen.Const("")), (1, Gen.OneOf("0", "1", "2")))
        from origin in Gen.Frequency((4, Gen.Const("home-bred")), (1, Gen.Const("bought")), (tidy ? 0 : 1, Gen.OneOf("", "n/a")))
        from sex in number == "B2" ? Gen.OneOf("M", "M", "steer") : Gen.Frequency((12, Gen.Const("F")), (tidy ? 0 : 1, Gen.Const("")))
        select new AnimalRow(number, born, sex, mob, parity, [origin]);

    private static Gen<EventRow> Row(Season season, FloorWordsDrawn words, ImmutableArray<string> numbers, bool tidy)
    {
        var kinds = words.Kinds.SelectMany(kind => Enumerable.Repeat(kind, kind switch
        {
            "calving" or "mating" => 5,
            "transfer" or "pregnancy test" => 3,
            "drying off" or "bull in" or "bull out" => 2,
            _ => 1,
        })).ToArray();
        return
            from kind in Gen.OneOf(kinds)
            from date in Past(season)
            from single in Gen.OneOf([.. numbers])
            from whom in kind is "bull in" or "bull out" ? Gen.Frequency((2, Gen.Const(single)), (2, Gen.Const("mob:Home")), (1, Gen.Const("herd"))) : kind == "pregnancy test" ? Gen.Frequency((12, Gen.Const(single)), (1, Gen.Const("mob:Home"))) : Gen.Const(single)
            from scan in Scan(words, tidy)
            from mob in Gen.OneOf("Home", "Back", "Away")
            from own in Gen.OneOf([.. words.OwnAnswers, ""])
            select kind switch
            {
                "pregnancy test" => scan with { Date = Text(date), Animal = whom },
                _ when kind == words.Own => new EventRow(Text(date), single, kind, scan.Value is "pregnant" or "empty" ? own : scan.Value),
                "mob" => new EventRow(Text(date), single, "mob", mob),
                "mating" => new EventRow(Text(date), single, words.Mating),
                _ => new EventRow(Text(date), whom, kind),
            };
    }

    private static Gen<EventRow> Scan(FloorWordsDrawn words, bool tidy) =>
        from answer in Gen.Frequency((5, Gen.Const("empty")), (3, Gen.Const("pregnant")), (tidy ? 0 : 1, Gen.OneOf("pending", "", "smudged")))
        from method in Gen.Frequency((4, Gen.Const("ultrasound")), (2, Gen.Const("hand")), (2, Gen.Const("")), (tidy ? 0 : 1, Gen.Const("scope")))
        select new EventRow("", "", words.Test, answer, Method: method);

    /// <summary>For some of what happened, a scan so many days later: just late enough, or a day too early.</summary>
    private static Gen<ImmutableArray<EventRow>> Scans(FloorWordsDrawn words, EventRow[] rows, bool tidy) => InTurn(rows
        .Where(row => row.Kind == words.Mating || row.Kind is "transfer" or "bull out" or "purchase" or "drying off")
        .Select(row =>
            from wanted in Gen.Frequency((2, Gen.Const(true)), (1, Gen.Const(false)))
            from days in Gen.OneOf(1, 27, 28, 34, 35, 36, 41, 42, 43, 60)
            from scan in Scan(words, tidy)
            from empty in Gen.Frequency((3, Gen.Const(true)), (1, Gen.Const(false)))
            let whom = row.Animal.StartsWith("mob:", StringComparison.Ordinal) || row.Animal == "herd" ? "7" : row.Animal
            select wanted ? (empty ? scan with { Value = "empty" } : scan) with { Date = Text(LocalDatePattern.Iso.Parse(row.Date).Value.PlusDays(days)), Animal = whom } : null))
        .Select(scans => scans.OfType<EventRow>().ToImmutableArray());

    /// <summary>One cell that nobody can read.</summary>
    public static Gen<EventRow> Garbled(EventRow row) => Gen.OneOf(
        row with { Date = "" }, row with { Date = "3 May" }, row with { Animal = "" }, row with { Animal = "9999" }, row with { Kind = "" }, row with { Kind = "hiccup" },
        row with { Value = row.Value.Length > 0 ? "?" : row.Value, Recorded = row.Value.Length > 0 ? "" : "soon" }, row with { Method = row.Method.Length > 0 ? "scope" : "", Recorded = row.Method.Length > 0 ? "" : "soon" });

    private static Gen<ImmutableArray<EventRow>> OneGarbled(ImmutableArray<EventRow> rows) =>
        Gen.Int[0, rows.Length - 1].SelectMany(i => Garbled(rows[i]).Select(row => rows.SetItem(i, row)));

    private static Gen<LocalDate> Past(Season season) => Gen.Frequency(
        (3, from anchor in Gen.OneOf(season.Known, season.Collection, season.FirstTransfer, season.FinalTransfer)
            from ago in Gen.OneOf(Borders)
            select Sooner(anchor.PlusDays(-ago), season.Known)),
        (2, Gen.Int[0, 90].Select(days => season.Known.PlusDays(-days))),
        (2, Gen.Int[0, 420].Select(days => season.Known.PlusDays(-days))));

    private static Gen<ImmutableArray<T>> InTurn<T>(IEnumerable<Gen<T>> each) =>
        each.Aggregate(Gen.Const(ImmutableArray<T>.Empty), (before, one) => Gen.Select(before, one, (values, value) => values.Add(value)));

    private static LocalDate Sooner(LocalDate a, LocalDate b) => a < b ? a : b;

    private static string Text(LocalDate date) => LocalDatePattern.Iso.Format(date);
}
