using System.Text.RegularExpressions;
using Byrelaw.Judging.Tuning;
using Byrelaw.Language.Reading;
using Byrelaw.Records.Reading;
using Byrelaw.Reporting.Tuning;

namespace Byrelaw.Reporting.Tests.Tuning;

/// <summary>The picture of a number that has neither a least nor a greatest value: what is drawn begins before the first value told, and goes on to the right.</summary>
public sealed partial class TuningPictureTests : IRuleFiles
{
    private const string Rules = """
        measure weight  in kg

        rules for recipients

        rule "R"
          needs change in weight in the last 90 days at least -5 kg
          because "so"

        records "records"
          up to 2026-09-30

        programme "P"
          transfer on 2026-10-20
          choose recipients from females, judged on first transfer, for looking only
        """;

    [Fact]
    public void Its_lines_never_run_backwards()
    {
        var reading = RulebookReader.Read("farm.byre", this)!;
        var herd = HerdReader.Read(
            "animal,born,sex\n1,2020-05-01,F\n2,2020-05-01,F\n"u8.ToArray(),
            "date,animal,kind,value,unit\n2026-08-01,1,weight,500,kg\n2026-09-01,1,weight,480,kg\n2026-08-01,2,weight,500,kg\n2026-09-01,2,weight,498,kg\n"u8.ToArray(),
            reading.Rulebook.Vocabulary, reading.Rulebook.Records);
        var tuned = RuleTuner.Tune(reading.Rulebook, herd, reading.Rulebook.Rules[0], reading.Rulebook.Programme!.Choices[0]);
        tuned.Numbers[0].Tuning.Steps[0].Range.From.ShouldBeNull();

        var lines = Lines().Matches(HtmlDocument.Of(TunePage.Of(tuned))).Select(line => line.Groups[1].Value.Split(' ', StringSplitOptions.RemoveEmptyEntries)).ToList();
        lines.Count.ShouldBeGreaterThan(5);
        foreach (var line in lines)
        {
            var across = line.Select(point => double.Parse(point.Split(',')[0], CultureInfo.InvariantCulture)).ToList();
            across.ShouldBe(across.Order());
        }
    }

    public string Resolve(string from, string relative) => relative;

    public string Show(string path) => path;

    public byte[]? Read(string path) => Encoding.UTF8.GetBytes(Rules);

    // Those of the counts have bevelled corners; those of the axes have none.
    [GeneratedRegex("<polyline points=\"([^\"]*)\" style=\"[^\"]*bevel")]
    private static partial Regex Lines();
}
