using System.Globalization;
using Byrelaw.Language.Tests.Support;

namespace Byrelaw.Language.Tests.Problems;

/// <summary>Examples that are too long for a page.</summary>
internal static class MadeExamples
{
    public static void Add(RuleFilesInMemory files, string root, string code)
    {
        files.Add(root, code switch
        {
            "B0006" => ManyFiles(files),
            "B0008" => "rules for recipients\n" + new string('#', 2_000_000) + "\n",
            "B0107" => "event heat\ndefine busy\n  no heat" + Repeated(999, _ => " or heat") + " ever\n",
            "B0209" => "event heat\ndefine d1\n  no heat ever\n" + Repeated(64, i => $"define d{i + 2}\n  d{i + 1}\n"),
            _ => throw new ArgumentOutOfRangeException(nameof(code), code, "No example of this code is made."),
        });
    }

    private static string ManyFiles(RuleFilesInMemory files)
    {
        for (var i = 1; i <= 501; i++)
        {
            files.Add(i.ToString(CultureInfo.InvariantCulture) + ".byre", "");
        }

        return Repeated(501, i => $"use \"{i + 1}.byre\"\n");
    }

    private static string Repeated(int times, Func<int, string> piece) => string.Concat(Enumerable.Range(0, times).Select(piece));
}
