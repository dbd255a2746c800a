namespace Byrelaw.Judging.Tests.Documents;

/// <summary>The ordinary farm's files, judged under some lines below <c>records</c>.</summary>
internal sealed class OrdinaryFarmFiles(string programme) : IRuleFiles
{
    private const string UpTo = "  up to 2026-10-04\n";
    private static readonly string Folder = Repository.At("tests/Byrelaw.Judging.Tests/Documents/OrdinaryFarm");

    private string _rules = "";

    public static IEnumerable<string> Rows(string file) => File.ReadLines(Path.Combine(Folder, file)).Skip(1);

    public static IReadOnlyList<string> Animals() => File.ReadAllLines(Path.Combine(Folder, "animals.csv"));

    public string Resolve(string from, string relative) => relative;

    public string Show(string path) => path;

    public byte[]? Read(string path) => path == "farm.byre" ? Encoding.UTF8.GetBytes(_rules) : File.ReadAllBytes(Repository.At("rulesets/" + path));

    /// <summary>Judges as the program does: promises are held against the records first.</summary>
    /// <param name="lines">Below <c>records</c>.</param>
    /// <param name="files">Rows of events besides those of day one.</param>
    /// <param name="more">Rows besides.</param>
    /// <param name="animals">Other lines of animals.csv; null for the farm's.</param>
    /// <param name="upTo">How far the records reach.</param>
    /// <param name="resultsAreIn">Whether the samples that are at the laboratory have come back, and nothing was found in them.</param>
    public Draft Judge(IEnumerable<string> lines, IEnumerable<string> files, IEnumerable<string>? more = null, IEnumerable<string>? animals = null, string upTo = "2026-10-04", bool resultsAreIn = false)
    {
        _rules = programme.Replace(UpTo, UpTo.Replace("2026-10-04", upTo, StringComparison.Ordinal) + string.Concat(lines.Select(line => $"  {line}\n")), StringComparison.Ordinal);
        var reading = RulebookReader.Read("farm.byre", this)!;
        reading.Problems.Where(problem => problem.Severity == Language.Diagnostics.Severity.Error).ShouldBeEmpty();
        var events = string.Join('\n', ["date,animal,kind,value", .. Rows("events.csv"), .. files.SelectMany(Rows), .. more ?? []]) + "\n";
        events = resultsAreIn ? events.Replace(",pending\n", ",negative\n", StringComparison.Ordinal) : events;
        var herd = Byrelaw.Judging.Promises.Believed.Of(reading.Rulebook, HerdReader.Read(
            Encoding.UTF8.GetBytes(string.Join('\n', animals ?? Animals()) + "\n"), Encoding.UTF8.GetBytes(events), reading.Rulebook.Vocabulary, reading.Rulebook.Records));
        return new Judge(reading.Rulebook, herd).JudgeAll();
    }
}
