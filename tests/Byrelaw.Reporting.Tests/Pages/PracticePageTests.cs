using Byrelaw.Language.Reading;

namespace Byrelaw.Reporting.Tests.Pages;

/// <summary>Whoever signs what a farm does differently sees every line that can change an answer: names, hints, expectations, and as what each text of its own files is read.</summary>
public sealed class PracticePageTests : IRuleFiles
{
    private const string Farm = """
        use "vocabulary.byre"

        call parity  also lactation
        hint belegt may be mating

        expectation "A calf has a day of service"
          every calving comes 230 to 300 days after mating
          else mating is not complete, over 10%
          because "We write down every service."
          source "example"

        records "records"
          up to 2026-10-04
          from "diary.csv", a row for each event
            animal in "No"
            date in "Date"
            kind in "Code"
              - "S" is mating
              - "S" where "Remark" is "x" is heat
              - "XX" is left out
            leave out rows where "State" is "void"
            leave out columns "Weather"
          from "cows.csv", a row for each animal
            animal in "No"
            sex is F
        """;

    [Fact]
    public void Every_line_that_can_change_an_answer_stands_there()
    {
        var reading = RulebookReader.Read("farm.byre", this)!;
        DiagnosticText.Of(reading.Problems.Where(problem => problem.Severity == Severity.Error)).ShouldBe("");
        Snapshot.Verify(Byrelaw.Reporting.Pages.LocalPracticePage.Of(reading.Rulebook).ToMarkdown(), extension: "md");
    }

    public string Resolve(string from, string relative) => relative;

    public string Show(string path) => path;

    public byte[]? Read(string path) => path == "farm.byre" ? Encoding.UTF8.GetBytes(Farm) : File.ReadAllBytes(Repository.At("rulesets/" + path));
}
