using System.Globalization;

namespace Byrelaw.LanguageServer.Tests.Support;

/// <summary>A rule file far longer than any that a farm has written.</summary>
internal static class ThousandRules
{
    private static readonly string[] Demands =
    [
        "at least {0} days since last calving",
        "no mastitis in the last {0} days",
        "at least 1 heat since last calving",
        "latest body condition in the last {0} days between 4.0 and 5.5",
        "latest BVD virus in the last {0} days is negative",
    ];

    /// <summary>It uses <c>words.byre</c>; every rule is met by no more than one blank line.</summary>
    public static string Text { get; } = Write();

    private static string Write()
    {
        var text = new StringBuilder("use \"words.byre\"\n\nrules for recipients\n\n");
        for (var i = 0; i < 1000; i++)
        {
            var demand = string.Format(CultureInfo.InvariantCulture, Demands[i % Demands.Length], 20 + (i % 60));
            text.Append(CultureInfo.InvariantCulture, $"rule \"Rule {i}\"\n  needs {demand}\n  because \"A made-up reason.\"\n  source \"made up\"\n\n");
        }

        return text.ToString();
    }
}
