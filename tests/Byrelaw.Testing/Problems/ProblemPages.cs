namespace Byrelaw.Testing.Problems;

/// <summary>The pages in <c>docs/problems</c>, each among those that one test project tries.</summary>
public static class ProblemPages
{
    /// <summary>Where they lie, below the repository's root.</summary>
    public const string Folder = "docs/problems/";

    /// <summary>Those about problems that show when a rule file is read.</summary>
    public static IEnumerable<string> OfReading => All.Except(OfTrying).Except(OfRecords).Except(OfSheets).Except(OfTheLog).Except(OfJudging);

    /// <summary>Those about problems that show when rules are tried on made-up animals.</summary>
    public static IEnumerable<string> OfTrying => Starting("B10", "B11");

    /// <summary>Those about problems that show when records are read.</summary>
    public static IEnumerable<string> OfRecords => Starting("R01", "R02", "R03", "R05");

    /// <summary>The one about sheets that come back.</summary>
    public static IEnumerable<string> OfSheets => Starting("R04");

    /// <summary>The one about the log of judging.</summary>
    public static IEnumerable<string> OfTheLog => Starting("L");

    /// <summary>The one about rules and records that do not go together.</summary>
    public static IEnumerable<string> OfJudging => Starting("J");

    private static IEnumerable<string> All => Directory.EnumerateFiles(Repository.At(Folder), "*.md")
        .Select(path => Path.GetFileName(path)).Where(name => name != "README.md").Order(StringComparer.Ordinal);

    private static IEnumerable<string> Starting(params string[] starts) =>
        All.Where(name => starts.Any(start => name.StartsWith(start, StringComparison.Ordinal)));
}
