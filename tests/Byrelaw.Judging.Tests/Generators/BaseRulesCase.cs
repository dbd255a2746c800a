using Byrelaw.Judging.Tests.Reference;

namespace Byrelaw.Judging.Tests.Generators;

/// <summary>The base rules for a hormone, and records of a few animals about which the floor has something to say.</summary>
/// <param name="Text">The farm's own file.</param>
/// <param name="Farm">The records.</param>
/// <param name="Known">The day they reach.</param>
public sealed record BaseRulesCase(string Text, PlainFarm Farm, LocalDate Known)
{
    private static readonly string[] Promised =
        ["calving", "abortion", "mating", "transfer", "pregnancy test", "bull in", "bull out", "drying off", "purchase", "mob", "hormone given", "heat"];

    private static readonly FloorWordsDrawn Words = new("", true, "mating", "pregnancy test", "", []);

    public static readonly Gen<BaseRulesCase> Any =
        from season in Season.Any
        from farm in GenFloorRecords.For(season, Words, tidy: true)
        from left in Gen.Int[0, Promised.Length - 1].Array[0, 3]
        from since in Gen.OneOf(2000, 2000, 200)
        from wait in Gen.Int[0, 20]
        select new BaseRulesCase(
            $"""
            use "rulesets/treatment.byre"
            records "records"
              up to {Date(season.Known)}
              complete for {string.Join(", ", Promised.Where((_, i) => !left.Contains(i)))} since {Date(season.Known.PlusDays(-since))}
            programme "A farm"
              date first treatment on {Date(season.Known.PlusDays(wait))}
              choose treatment from females, judged on first treatment

            """,
            // A parity that calvings on record speak against is a contradiction, which nothing that is found out settles: one of the two has to be mended.
            farm with
            {
                FactNames = [.. farm.FactNames, "official identity"],
                Animals = [.. farm.Animals.Select((row, i) => row with { Parity = "", Facts = [.. row.Facts, $"55400070004100{i}"] })],
            },
            season.Known);

    /// <summary>The rules, read as the program reads them.</summary>
    public Rulebook Rulebook { get; } = RulebookReader.Read("farm.byre", new Files(Text))!.Rulebook;

    public override string ToString() => $"{Text}\n--- animals.csv\n{Encoding.UTF8.GetString(FarmCsv.Animals(Farm))}--- events.csv\n{Encoding.UTF8.GetString(FarmCsv.Events(Farm))}";

    private static string Date(LocalDate date) => LocalDatePattern.Iso.Format(date);

    private sealed class Files(string text) : IRuleFiles
    {
        public string Resolve(string from, string relative) => from == "farm.byre" ? relative : Path.GetDirectoryName(from) + "/" + relative;

        public string Show(string path) => path;

        public byte[]? Read(string path) => path == "farm.byre" ? Encoding.UTF8.GetBytes(text) : File.ReadAllBytes(Repository.At(path));
    }
}
