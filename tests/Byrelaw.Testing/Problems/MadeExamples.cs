using System.Globalization;

namespace Byrelaw.Testing.Problems;

/// <summary>Examples that are too long for a page.</summary>
internal static class MadeExamples
{
    /// <summary>The example's file, and before it the others that it needs.</summary>
    /// <exception cref="ArgumentOutOfRangeException">None is made for this code.</exception>
    public static IEnumerable<(string Name, string Text)> Of(string code, string name) => code switch
    {
        "B0006" => [.. Enumerable.Range(1, 501).Select(i => (i.ToString(CultureInfo.InvariantCulture) + ".byre", "")), (name, Repeated(501, i => $"use \"{i + 1}.byre\"\n"))],
        "B0008" => [(name, "rules for recipients\n" + new string('#', 2_000_000) + "\n")],
        "B0107" => [(name, "event heat\ndefine busy\n  no heat" + Repeated(999, _ => " or heat") + " ever\n")],
        "B0209" => [(name, "event heat\ndefine d1\n  no heat ever\n" + Repeated(64, i => $"define d{i + 2}\n  d{i + 1}\n"))],
        "B0875" => [(name, $"use \"{ExampleFiles.Vocabulary}\"\n\nrecords \"records\"\n" + Repeated(201, i => $"  from \"{i + 1}.csv\", a row for each event\n    date in \"Day\"\n    animal in \"No\"\n    kind in \"Code\"\n"))],
        _ => throw new ArgumentOutOfRangeException(nameof(code), code, "No example of this code is made."),
    };

    private static string Repeated(int times, Func<int, string> piece) => string.Concat(Enumerable.Range(0, times).Select(piece));
}
