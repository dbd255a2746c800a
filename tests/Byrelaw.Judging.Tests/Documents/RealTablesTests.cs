using Byrelaw.Judging.Promises;
using Byrelaw.Language.Diagnostics;
using Byrelaw.Records.Reading;

namespace Byrelaw.Judging.Tests.Documents;

/// <summary>Four tables of real dairy herds become herds by lines of the language alone.</summary>
/// <remarks>
/// <c>BYRELAW_TABLES</c> names a folder with <c>anim.csv</c>, <c>mvt.csv</c>, <c>ai.csv</c> and <c>rec.csv</c>, the first ten herds of the open dataset DairyHerdData (github: AurMad/DairyHerdData, MIT
/// licence), written out of R as CSV and otherwise as they are. They are not in this repository; <c>docs/many-herds.md</c> shows the same with tables that are made up.
/// </remarks>
public sealed class RealTablesTests
{
    private const string Farm = """
        use "vocabulary.byre"

        records "tables"
          up to 2010-12-31
          complete for mating, transfer, bull in, bull out since 2006-01-01
          from "anim.csv", a row for each animal
            animal in "anim_id"
            born in "birth_date"
            sex is F
            leave out columns "birth_herd", "dam_id", "bull_id", "breed"
          from "mvt.csv", a row for each event
            animal in "anim_id"
            herd in "herd_id"
            date in "date_in"
            kind in "cause_in"
              - "A" is purchase
              - "P" is purchase
              - "N" is left out
            leave out columns "date_out", "caus_out"
          from "mvt.csv", a row for each event
            animal in "anim_id"
            herd in "herd_id"
            date in "date_out"
            kind in "caus_out"
              - "E" is sale
              - "H" is sale
              - "M" is death
              - "B" is slaughter
              - "C" is slaughter
            leave out rows where "date_out" is ""
            leave out columns "date_in", "cause_in"
          from "ai.csv", a row for each event
            animal in "cow_id"
            herd in "herd_id"
            date in "ai_date"
            kind is mating
            method is inseminated
            sire in "bull_id"
          from "rec.csv", a row for each event
            animal in "anim_id"
            herd in "herd_id"
            date in "calv_date"
            kind is calving
            leave out columns "ctrl_date", "parity", "milk", "fat", "prot", "scc"
        """;

    // Calvings that count, and those of them with no father, counted over the same tables apart from this program: of the last herd a first count said 65, a second by a script of its own 66.
    private static readonly (string Herd, int Counts, int Fails)[] Known =
    [
        ("FR000001", 85, 0), ("FR000002", 94, 19), ("FR000003", 97, 0), ("FR000004", 73, 18), ("FR000005", 168, 16),
        ("FR000006", 109, 10), ("FR000007", 74, 36), ("FR000008", 121, 1), ("FR000009", 123, 70), ("FR000010", 66, 0),
    ];

    [Fact]
    public void As_many_calvings_count_and_fail_as_somebody_else_counted()
    {
        if (Environment.GetEnvironmentVariable("BYRELAW_TABLES") is not { Length: > 0 } folder)
        {
            Assert.Skip("BYRELAW_TABLES names no folder with the four tables.");
            return;
        }

        var rules = RulebookReader.Read("farm.byre", new OneFile())!;
        DiagnosticText.Of(rules.Problems).ShouldBe("");
        var herds = HerdFolder.Open(folder, "", rules.Rulebook.Vocabulary, rules.Rulebook.Records!);
        var father = rules.Rulebook.Expectations.OfType<EntryExpectation>().Single(one => one.Name == "A calf has a father");
        var counted = Known.Select(known =>
        {
            var trial = EntryTrial.OnPromises(herds.Read(known.Herd, new LocalDate(2009, 3, 1)), father, new HashSet<int>());
            return (known.Herd, trial.Counts, trial.Failing.Count);
        });

        counted.ShouldBe(Known);
        herds.WithoutHerd.ShouldBe(0);
    }

    private sealed class OneFile : IRuleFiles
    {
        public string Resolve(string from, string relative) => relative;

        public string Show(string path) => path;

        public byte[]? Read(string path) => path == "farm.byre" ? System.Text.Encoding.UTF8.GetBytes(Farm) : path == "vocabulary.byre" ? File.ReadAllBytes(Repository.At("rulesets/vocabulary.byre")) : null;
    }
}
