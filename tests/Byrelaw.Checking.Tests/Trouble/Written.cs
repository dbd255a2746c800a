namespace Byrelaw.Checking.Tests.Trouble;

/// <summary>Rules that a test writes out, with words that most tests need.</summary>
internal static class Written
{
    public const string Words = """
        event calving  also calved, not before 15 months of age
        event heat  also heats
        event mating  not before 6 months of age
        event transfer  not before 6 months of age
        event mastitis
        event purchase  joins the herd
        event bull in
        event bull out
        spell running with bull  from bull in until bull out, or in a mob with a male from 6 months of age
        measure body condition  on scale 1 to 10
        measure weight  in kg
        measure serum copper  in umol/L, molar mass 63.546
        test pregnancy test  answers pregnant, empty  in the yards
        test neospora  answers positive, negative
        fact breed  is one of Friesian, Jersey, crossbred
        fact breeding index  is number
        fact mature weight  in kg
        fact dam  is text

        """;

    /// <summary>Reads rules; they must have no errors.</summary>
    public static Rulebook Read(string rules)
    {
        var reading = RulebookReader.Read("rules.byre", new Files(rules))!;
        reading.Problems.Where(problem => problem.Severity == Severity.Error).Select(problem => problem.Message).ShouldBeEmpty();
        return reading.Rulebook;
    }

    /// <summary>The troubles of rules: <c>B1101 at 12: no animal can ever meet this</c>.</summary>
    public static IEnumerable<string> Troubles(string rules) =>
        Find(Read(rules)).Select(problem => $"{problem.Code} at {problem.Line}: {problem.Message}");

    public static ImmutableArray<Diagnostic> Find(Rulebook rulebook) => TroubleFinder.Find(rulebook);

    /// <summary>Reads a file of the checkout.</summary>
    public static Rulebook ReadFile(string path) => RulebookReader.Read(Repository.At(path), new DiskFiles())!.Rulebook;

    private sealed class Files(string rules) : IRuleFiles
    {
        public string Resolve(string from, string relative) => relative;

        public string Show(string path) => path;

        public byte[]? Read(string path) => path switch
        {
            "words.byre" => Encoding.UTF8.GetBytes(Words),
            "rules.byre" => Encoding.UTF8.GetBytes("use \"words.byre\"\n" + rules),
            _ => null,
        };
    }

    private sealed class DiskFiles : IRuleFiles
    {
        public string Resolve(string from, string relative) => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(from)!, relative));

        public string Show(string path) => Path.GetRelativePath(Repository.Root, path).Replace('\\', '/');

        public byte[]? Read(string path) => File.Exists(path) ? File.ReadAllBytes(path) : null;
    }
}
