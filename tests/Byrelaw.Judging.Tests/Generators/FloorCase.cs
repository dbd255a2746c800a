using Byrelaw.Judging.Tests.Reference;

namespace Byrelaw.Judging.Tests.Generators;

/// <summary>A farm with the floor under its lists: rules in layers, as texts, and records.</summary>
/// <param name="Files">Rule files by name; <c>farm.byre</c> is the programme's.</param>
/// <param name="Farm">The records.</param>
/// <param name="On">Judged on this day; null for each list's own days.</param>
public sealed record FloorCase(ImmutableSortedDictionary<string, string> Files, PlainFarm Farm, LocalDate? On)
{
    public const string Programme = "farm.byre";

    public static readonly Gen<FloorCase> Any = For(tidy: false);

    /// <summary>Nothing in the records that cannot be read.</summary>
    public static readonly Gen<FloorCase> Tidy = For(tidy: true);

    /// <summary>The rules, read as the program reads them.</summary>
    public Rulebook Rulebook { get; } = RulebookReader.Read(Programme, new FilesInMemory(Files))!.Rulebook;

    public JudgingCase AsJudged => new(Rulebook, Farm, null, On);

    /// <summary>The same rules with another layer between the base and the farm, and nothing of the farm's own.</summary>
    public FloorCase WithLayer(string text) => new(
        Files.SetItem("practice.byre", "use \"base.byre\"\n\n" + text).SetItem(Programme, Files[Programme].Split(GenFloorRules.EndOfProgramme)[0]), Farm, On);

    private static Gen<FloorCase> For(bool tidy) =>
        from season in Season.Any
        from words in GenFloorWords.Any
        from farm in GenFloorRecords.For(season, words, tidy)
        from files in GenFloorRules.For(season, words, [.. farm.Animals.Select(animal => animal.Number)])
        from @on in Gen.Frequency((8, Gen.Const((LocalDate?)null)), (1, Gen.Int[-60, 60].Select(days => (LocalDate?)season.Known.PlusDays(days))))
        select new FloorCase(files, farm, @on);

    public override string ToString()
    {
        var text = new StringBuilder();
        foreach (var (name, content) in Files)
        {
            text.Append(CultureInfo.InvariantCulture, $"--- {name}\n{content}");
        }

        text.Append("--- --on ").Append(On?.ToString() ?? "(none)");
        text.Append("\n--- animals.csv\n").Append(Encoding.UTF8.GetString(FarmCsv.Animals(Farm)));
        return text.Append("--- events.csv\n").Append(Encoding.UTF8.GetString(FarmCsv.Events(Farm))).ToString();
    }

    private sealed class FilesInMemory(ImmutableSortedDictionary<string, string> files) : IRuleFiles
    {
        public string Resolve(string from, string relative) => relative;

        public string Show(string path) => path;

        public byte[]? Read(string path) => files.TryGetValue(path, out var text) ? Encoding.UTF8.GetBytes(text) : null;
    }
}
