using Byrelaw.Judging.Tests.Reference;

namespace Byrelaw.Judging.Tests.Gates;

/// <summary>A small farm with two sessions, a treatment that suits some, and one that suits everyone; its records are drawn.</summary>
/// <param name="Farm">The records.</param>
/// <param name="Promised">What is promised to be written down since 2020.</param>
internal sealed record SeasonCase(PlainFarm Farm, ImmutableArray<string> Promised)
{
    public static readonly LocalDate Today = new(2026, 8, 1);

    private const int Cows = 4;
    private const int Rows = 9;

    private static readonly ImmutableArray<string> Events = ["calving", "abortion", "heat", "mating", "transfer", "mastitis", "drying off", "purchase", "bull in", "bull out"];
    private static readonly ImmutableArray<string> Kept = [.. Events, "pregnancy test"];

    private const string Rules = """
        event calving      not before 15 months of age
        event abortion     not before 9 months of age
        event heat
        event mating       not before 6 months of age
        event transfer     not before 6 months of age
        event mastitis
        event drying off   not before 15 months of age
        event purchase     joins the herd
        event bull in      not before 6 months of age
        event bull out     not before 6 months of age
        spell running with bull  from bull in until bull out, or in a mob with a male from 6 months of age
        fact origin        is one of home-bred, bought
        test pregnancy test  answers pregnant, empty  in the yards, with method is one of ultrasound, blood, milk, hand, blank is hand
        measure serum copper  in umol/L

        method "Prostaglandin"
          suits between 6 and 16 days since last heat
          day 0 "Prostaglandin"
          in heat 70%, weight 20, on day 2 20%, day 3 45%, day 4 25%, day 5 10%
          because "b"
        method "Insert"
          day 0 "In", device in
          day 7 "Out; prostaglandin", device out
          day 9 "GnRH"
          counts as heat on day 9
          because "b"
        method "Natural heat"
          suits at least 1 heat in the last 60 days
          cycles every 21 days
          because "b"

        rules for treatment
        safety rule "Forty days calved"
          needs at least 40 days since last calving
          because "b"
        rules for recipients
        rule "Eight weeks calved"
          needs at least 56 days since last calving
          because "b"
        rule "Two clean weeks"
          needs no mastitis in the last 14 days
          because "b"
        rule "Copper"
          needs latest serum copper in the last 60 days at least 8 umol/L
          because "b"


        """;

    private const string Programme = """
        programme "P"
          collection on 2026-08-20, 2 times every 14 days
          transfer 8 days after collection, over 2 days
          prepare 2 recipients by "Prostaglandin"
          prepare 2 recipients by "Insert"
          prepare recipients by "Natural heat"
          choose treatment from females, judged on first treatment
          choose recipients from females, judged from first transfer to final transfer
        """;

    /// <summary>Cows that calved in spring with copper on record, and rows of all sorts over them.</summary>
    public static readonly Gen<SeasonCase> Any =
        from rows in Gen.Select(Gen.Int[1, Cows], Gen.Int[0, Events.Length + 1], Gen.Int[0, 130], Gen.Int[0, 3], Gen.Int[0, 12], Row).Array[Rows]
        from copper in Gen.Int[0, 70].Array[Cows]
        select new SeasonCase(
            new PlainFarm(
                ["origin"], [.. Enumerable.Range(1, Cows).Select(cow => new AnimalRow($"{cow}", "2021-05-01", "F", "", "", ["home-bred"]))],
                [
                    .. Enumerable.Range(1, Cows).SelectMany(cow => new[] { Calved(cow), new EventRow(Date(copper[cow - 1]), $"{cow}", "serum copper", "20", "umol/L"), new EventRow(Date(5 + cow), $"{cow}", "heat") }),
                    .. rows,
                ]),
            Kept);

    /// <summary>As the program reads it.</summary>
    public Rulebook Rulebook { get; } = Read(Promised);

    public Herd Herd => HerdReader.Read(FarmCsv.Animals(Farm), FarmCsv.Events(Farm), Rulebook.Vocabulary, Rulebook.Records);

    public override string ToString() => $"promised: {string.Join(", ", Promised)}\n{Encoding.UTF8.GetString(FarmCsv.Events(Farm))}";

    private static EventRow Calved(int cow) => new(Date(95 + cow), $"{cow}", "calving");

    private static EventRow Row(int cow, int kind, int ago, int answer, int broken)
    {
        var date = broken == 0 ? Date(ago).Replace("2026-", "20x6-", StringComparison.Ordinal) : Date(ago);
        return kind < Events.Length ? new EventRow(date, $"{cow}", Events[kind])
            : kind == Events.Length ? new EventRow(date, $"{cow}", "pregnancy test", answer == 0 ? "pregnant" : answer == 1 ? "pending" : "empty", Method: "ultrasound")
            : new EventRow(date, $"{cow}", "serum copper", answer == 0 ? "5" : answer == 1 ? "pending" : "12", answer == 1 ? "" : "umol/L");
    }

    private static string Date(int ago) => LocalDatePattern.Iso.Format(Today.PlusDays(-ago));

    private static Rulebook Read(ImmutableArray<string> promised)
    {
        var reading = RulebookReader.Read("farm.byre", new Files($"{Rules}records \"records\"\n  up to 2026-08-01\n  complete for {string.Join(", ", promised)} since 2020-01-01\n  no mob on this farm\n\n{Programme}"))!;
        reading.Problems.Where(problem => problem.Severity == Language.Diagnostics.Severity.Error).Select(problem => $"{problem.Line}: {problem.Found}").ShouldBeEmpty();
        return reading.Rulebook;
    }

    private sealed class Files(string text) : IRuleFiles
    {
        public string Resolve(string from, string relative) => relative;

        public string Show(string path) => path;

        public byte[]? Read(string path) => path == "farm.byre" ? Encoding.UTF8.GetBytes(text) : null;
    }
}
