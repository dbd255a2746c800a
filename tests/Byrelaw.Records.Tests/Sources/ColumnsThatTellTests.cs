using Byrelaw.Records.Sources;

namespace Byrelaw.Records.Tests.Sources;

/// <summary>A column, or a file, that nobody reads and whose cells tell of calves is told, whatever its heading is.</summary>
public sealed class ColumnsThatTellTests
{
    private const string Farm = """
        event calving
        event mating
        test pregnancy test  answers pregnant, empty

        records "records"
          up to 2026-10-04
          from "cows.csv", a row for each animal, as at 2026-09-30
            animal in "No"
          from "diary.csv", a row for each event
            date in "Day"
            animal in "No"
            kind is mating
        """;

    [Theory]
    [InlineData("Befund", "PD+", "PD-", "Befund")]
    [InlineData("Befund", "in calf", "", "Befund")]
    [InlineData("Befund", "P", "E", "Befund")]
    [InlineData("Kalbt", "2027-02-01", "", "Kalbt")]
    [InlineData("Gewogen", "2026-02-01", "2026-02-01", "")]
    [InlineData("Rang", "1", "2", "")]
    [InlineData("Klasse", "A", "E", "")]
    [InlineData("Farbe", "P", "R", "")]
    [InlineData("Zwilling", "yes", "", "")]
    [InlineData("Befund", "PD-", "leer", "")]
    public void A_column_tells(string heading, string first, string second, string expected)
    {
        string.Join(", ", Herd(Farm, heading, first, second).HeadingsThatTell).ShouldBe(expected);
        string.Join(", ", Herd(Farm.Replace("animal in \"No\"\n  from", $"animal in \"No\"\n    leave out columns \"{heading}\"\n  from", StringComparison.Ordinal), heading, first, second).HeadingsThatTell).ShouldBe(expected);
    }

    [Theory]
    [InlineData("In calf", "yes", true)]
    [InlineData("PD", "✓", true)]
    [InlineData("Due", "2026-11-20", true)]
    [InlineData("Scan", "looked at by two people and both say that she holds", true)]
    [InlineData("In calf", "no", false)]
    [InlineData("In calf", "-", false)]
    [InlineData("Weather", "yes", false)]
    [InlineData("Served", "yes", false)]
    public void A_cell_below_a_heading_of_calves_is_a_result_that_nobody_knows(string heading, string cell, bool isDoubt)
    {
        var herd = Herd(Farm, heading, cell, "");
        var test = herd.Vocabulary.FindKind("pregnancy test")!.Id;
        herd.Coverage.Gaps.Any(gap => gap.Animal == herd.Find("1") && gap.Kind == test).ShouldBe(isDoubt);
        herd.Coverage.Gaps.ShouldNotContain(gap => gap.Animal != herd.Find("1"));
    }

    [Theory]
    [InlineData("P", "", true)]
    [InlineData("E", "", false)]
    [InlineData("P", "\n  leave out P, which is not pregnancy test", false)]
    public void A_calf_in_a_row_that_is_left_out_is_a_result_that_nobody_knows(string leftOut, string said, bool isDoubt)
    {
        var farm = Farm.Replace("kind is mating", $"kind in \"Code\"\n      - \"PD\" where \"Detail\" is \"P\" is pregnancy test, pregnant\n      - \"PD\" where \"Detail\" is \"E\" is pregnancy test, empty\n    leave out rows where \"Detail\" is \"{leftOut}\"", StringComparison.Ordinal)
            .Replace("up to 2026-10-04", "up to 2026-10-04" + said, StringComparison.Ordinal);
        var herd = Herd(farm, "Rank", "", "", $"Day,No,Code,Detail\n2026-09-20,1,PD,{leftOut}\n");
        herd.Runs[herd.Vocabulary.FindKind("pregnancy test")!.Id].Answers.Count(answer => answer == KindRun.NotKnown).ShouldBe(isDoubt ? 1 : 0);
        herd.Runs[herd.Vocabulary.FindKind("pregnancy test")!.Id].Days.Length.ShouldBe(isDoubt ? 1 : 0);
    }

    [Fact]
    public void What_a_row_is_read_as_is_no_doubt_of_it()
    {
        var herd = Herd(Farm.Replace("kind is mating", "pregnancy test in \"PD\"\n      - \"P\" is pregnant\n      - \"E\" is empty", StringComparison.Ordinal), "Rank", "", "", "Day,No,PD,Due\n2026-05-01,1,P,2026-12-01\n2026-05-01,2,E,2026-12-01\n");
        var test = herd.Vocabulary.FindKind("pregnancy test")!;
        (Results("1"), Results("2")).ShouldBe(("0", "1 unknown"));

        string Results(string number) => string.Join(' ', herd.Runs[test.Id].Answers[herd.Runs[test.Id].Starts[herd.Find(number)]..herd.Runs[test.Id].Starts[herd.Find(number) + 1]].Select(answer => answer == KindRun.NotKnown ? "unknown" : $"{answer}"));
    }

    [Fact]
    public void What_another_source_reads_of_the_same_table_is_read()
    {
        var herd = Herd(Farm + "\n  from \"cows.csv\", a row for each event\n    animal in \"No\"\n    date in \"Served 1\"\n    kind is mating\n    leave out rows where \"Served 1\" is \"\"\n", "Served 1", "2026-05-01", "");

        herd.HeadingsNotRead.ShouldBeEmpty();
        herd.Problems.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("Visit;Cow;Result\n20/11/2026;1;PD+\n20/11/2026;2;PD-\n", true)]
    [InlineData("Cow;Belegt am;Served\n1;20/11/2026;x\n", true)]
    [InlineData("Bull;Price\nAldo;40\n", false)]
    [InlineData("Day,No\n2026-05-01,1\n2026-09-20,2\n", true, "diary.bak")]
    [InlineData("Day,No\n2026-05-01,1\n", false, "diary.csv~")]
    public void A_file_beside_the_records_tells(string text, bool tells, string name = "vet.csv")
    {
        var folder = Directory.CreateTempSubdirectory("byrelaw-beside-").FullName;
        try
        {
            File.WriteAllText(Path.Combine(folder, "cows.csv"), "No\n1\n2\n");
            File.WriteAllText(Path.Combine(folder, "diary.csv"), "Day,No\n2026-05-01,1\n");
            File.WriteAllText(Path.Combine(folder, name), text);
            var rules = FarmFiles.Rules(Farm);
            string.Join(", ", RecordInput.In(folder, "records", rules.Rulebook.Vocabulary, rules.Rulebook.Records).FilesNotRead).ShouldBe(tells ? $"records/{name}" : "");
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Theory]
    [InlineData("Diary", "2026b", "Day,No,What", "2026-09-10,2,AI", true)]
    [InlineData("Diary", "Copy", "Day,No,What", "2026-05-01,1,AI", false)]
    [InlineData("Diary", "Feed", "Day,Tonnes,Field", "2026-05-01,3,Flat", false)]
    [InlineData("Diary", "Services", "Day,Cow", "2026-09-10,2", true)]
    [InlineData("Diary", "Vet", "Day,Cow,Found", "2026-09-10,2,PD+", true)]
    public void A_sheet_that_nobody_reads_is_told_of(string read, string other, string headings, string row, bool tells)
    {
        var folder = Directory.CreateTempSubdirectory("byrelaw-sheets-").FullName;
        try
        {
            var workbook = Byrelaw.Records.Workbooks.WorkbookWriter.Of([(read, [["Day", "No", "What"], ["2026-05-01", "1", "AI"]]), (other, [headings.Split(','), row.Split(',')])]);
            File.WriteAllBytes(Path.Combine(folder, "diary.xlsx"), workbook);
            File.WriteAllText(Path.Combine(folder, "cows.csv"), "No\n1\n2\n");
            var rules = FarmFiles.Rules("""
                event calving
                event mating
                test pregnancy test  answers pregnant, empty

                records "records"
                  up to 2026-09-30
                  complete for mating since 2026-01-01
                  from "cows.csv", a row for each animal
                    animal in "No"
                    sex is F
                  from "diary.xlsx", sheet "Diary", a row for each event
                    animal in "No"
                    date in "Day"
                    kind in "What"
                      - "AI" is mating

                """);
            string.Join(", ", RecordInput.In(folder, "records", rules.Rulebook.Vocabulary, rules.Rulebook.Records).FilesNotRead).ShouldBe(tells ? $"records/diary.xlsx, {other}" : "");
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void A_mob_that_holds_all_words_of_another_and_is_one_animals_alone_may_be_that_one()
    {
        (int Mob, int Whose)[] given = [(0, 0), (0, 1), (0, 2), (1, 3), (1, 3), (2, 4), (2, 5), (3, 6)];
        Byrelaw.Records.Spellings.MobSlips.Of(["River", "River cows", "Hill mob", "Bulls"], given, []).ShouldBe(new Dictionary<int, int> { [1] = 0 }, "a mob of two is one of its own, and so is that of the bulls; written twice of one, it is one's");
    }

    private static Herd Herd(string farm, string heading, string first, string second, string diary = "Day,No\n2026-05-01,1\n") =>
        FarmFiles.Herd(farm, ("cows.csv", $"No,{heading}\n1,{first}\n2,{second}\n3,\n"), ("diary.csv", diary));
}
