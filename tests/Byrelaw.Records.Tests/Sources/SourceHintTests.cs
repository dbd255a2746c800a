using Byrelaw.Records.Sources;

namespace Byrelaw.Records.Tests.Sources;

/// <summary>A row of a source that the farm turns into something else, or leaves out, may still be what its own text says.</summary>
public sealed class SourceHintTests
{
    [Theory]
    [InlineData("PD,P", "pregnancy test")]
    [InlineData("PD,E", "")]
    [InlineData("S,x", "mating")]
    [InlineData("S,", "")]
    public void A_text_that_a_remark_turns_into_something_else(string row, string hints) => Hints("""
          kind in "Code"
            - "PD" is pregnancy test
            - "PD" where "Detail" is "P" is ovary check, pending
            - "S" is mating
            - "S" where "Detail" is "x" is heat
          value in "Detail"
            - "E" is empty
            - "x" is blank
        """, row).ShouldBe(hints);

    [Theory]
    [InlineData("pregnancy test,P", "pregnancy test")]
    [InlineData("pregnancy test,empty", "")]
    [InlineData("heat,P", "")]
    public void A_row_that_is_left_out_and_called_by_a_kind_s_own_name(string row, string hints) => Hints("""
          kind in "Code"
          value in "Detail"
          leave out rows where "State" is "x"
        """, row + ",x").ShouldBe(hints);

    [Theory]
    [InlineData("PD,P", "pregnancy test")]
    [InlineData("PD,empty", "")]
    public void A_row_that_is_left_out_of_a_file_of_scans(string row, string hints) => Hints("""
          kind is pregnancy test
          value in "Detail"
          leave out rows where "State" is "x"
        """, row + ",x").ShouldBe(hints);

    private static string Hints(string lines, string row)
    {
        var rules = RulebookReader.Read("farm.byre", new OneFile("event heat\nevent mating\ntest pregnancy test answers pregnant, empty\ntest ovary check answers \"corpus luteum\", cyst\n\nrecords\n  up to 2026-10-04\n"
            + "  from \"cows.csv\", a row for each animal\n    animal in \"No\"\n  from \"diary.csv\", a row for each event\n    date in \"Day\"\n    animal in \"No\"\n" + string.Concat(lines.Split('\n').Select(line => "  " + line + "\n"))))!;
        DiagnosticText.Of(rules.Problems).ShouldBe("");
        string Text(string file) => file == "cows.csv" ? "No\n1\n" : "Day,No,Code,Detail,State\n2026-09-01,1," + (row.Count(sign => sign == ',') == 2 ? row : row + ",") + "\n";
        var input = SourceReader.Read(file => Encoding.UTF8.GetBytes(Text(file)), file => file, rules.Rulebook.Vocabulary, rules.Rulebook.Records!);
        var herd = HerdReading.Read(input, rules.Rulebook.Vocabulary, rules.Rulebook.Records, null, ReadingOptions.Default).Herd;
        var test = herd.Vocabulary.FindKind("pregnancy test")!;

        // A test that is told of is one whose result nobody knows; a service is one that cannot be read.
        return herd.Runs[test.Id].Answers.Contains(KindRun.NotKnown) ? "pregnancy test"
            : string.Join(", ", herd.Coverage.Gaps.Select(gap => herd.Vocabulary.Kinds[gap.Kind].Name));
    }
}
