namespace Byrelaw.Records.Tests.KnownDays;

/// <summary>A person's word for one run stands in place of every <c>up to</c>; the day of a sheet and the end of a promise stay.</summary>
public sealed class ReachByWordTests
{
    private const string Farm = """
        event calving
        event mating
        event heat

        records
          up to 2026-09-20
          complete for calving since 2026-01-01
          complete for heat since 2026-01-01 until 2026-08-10
          from "cows.csv", a row for each animal, as at 2026-08-31
            animal in "No"
            last mating in "Served"
          from "diary.csv", a row for each event, up to 2026-08-25
            date in "Day"
            animal in "No"
            kind in "What"
              - "C" is calving
        """;

    [Fact]
    public void It_stands_for_every_up_to_and_for_nothing_else()
    {
        var rules = FarmFiles.Rules(Farm);
        rules.Problems.ShouldBeEmpty(DiagnosticText.Of(rules.Problems));
        var files = FarmFiles.Bytes([("cows.csv", "No,Served\n1,2025-11-01\n2,\n"), ("diary.csv", "Day,No,What\n2026-08-20,1,C\n2026-09-25,2,C\n")]);

        Reaches(rules.Rulebook.Records!).ShouldBe("2026-08-25, 2026-08-31, 2026-08-10");
        Reaches(rules.Rulebook.Records!.ReachingTo(Words.Date("2026-09-24"))).ShouldBe("2026-09-24, 2026-08-31, 2026-08-10");

        string Reaches(RecordKeeping keeping)
        {
            var input = FarmFiles.Input(rules, files);
            var herd = HerdReading.Read(input, rules.Rulebook.Vocabulary, keeping, null, ReadingOptions.Default).Herd;
            LastEntries.Of(herd).ShouldBe([("diary.csv", Words.Date("2026-08-20"))], "the sheet is of one day, and what is to come moves nothing");
            herd.KnownDay.ShouldBe(keeping.UpTo!.Value);
            return string.Join(", ", new[] { "calving", "mating", "heat" }.Select(kind => Shown.Date(Reached(herd, kind))));
        }
    }

    private static int Reached(Herd herd, string kind) => Math.Min(herd.Coverage.KnownDay, herd.Coverage.Reach[herd.Vocabulary.FindKind(kind)!.Id]);
}
