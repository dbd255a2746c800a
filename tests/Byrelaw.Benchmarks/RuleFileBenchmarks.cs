using System.Globalization;
using System.Text;
using Byrelaw.Language.Reading;

namespace Byrelaw.Benchmarks;

/// <summary>Reading, binding and resolving a file of 1,000 rules.</summary>
[ShortRunJob]
public class RuleFileBenchmarks : IRuleFiles
{
    private readonly byte[] _file = Encoding.UTF8.GetBytes(ThousandRules());

    [GlobalSetup]
    public void SetUp()
    {
        var reading = ReadRules();
        if (reading.HasErrors || reading.Rulebook.Rules.Length != 1000)
        {
            throw new InvalidOperationException("The made-up rules were not read whole: " + reading.Problems.FirstOrDefault());
        }
    }

    [Benchmark]
    public RulebookReading ReadRules() => RulebookReader.Read("made-up.byre", this)!;

    string IRuleFiles.Resolve(string from, string relative) => relative;

    string IRuleFiles.Show(string path) => path;

    byte[]? IRuleFiles.Read(string path) => path == "made-up.byre" ? _file : null;

    private static string ThousandRules()
    {
        var text = new StringBuilder("""
            event calving  also calvings, calved
            event heat  also heats
            event mastitis
            measure body condition  on scale 1 to 10
            test uterine check  answers clean, discharge

            rules for recipients


            """);
        string[] demands =
        [
            "at least {0} days since last calving",
            "no mastitis in the last {0} days",
            "at least 1 heat since last calving",
            "latest body condition in the last {0} days between 4.0 and 5.5",
            "latest uterine check from {0} days after last calving is clean",
        ];
        for (var i = 0; i < 1000; i++)
        {
            var demand = string.Format(CultureInfo.InvariantCulture, demands[i % demands.Length], 20 + (i % 60));
            text.Append(CultureInfo.InvariantCulture, $"rule \"Rule {i}\"\n  needs {demand}\n  because \"A made-up reason.\"\n  source \"made up\"\n\n");
        }

        return text.ToString();
    }
}
