namespace Byrelaw.Cli.Tests;

/// <summary>Records written as they are read give the same answers where they are read again.</summary>
public sealed class RecordsToTests : IDisposable
{
    private const string Sources = """

          from "cows.csv", separated by semicolons, a row for each animal
            dates day first
            animal in "No"
            official identity in "Tag"
            born in "Born"
            sex in "Sex"
              - "cow" is F
            mob in "Group"
          from "diary.csv", separated by semicolons, a row for each event
            dates day first
            decimal comma
            date in "Day"
            animal in "No"
            kind in "What"
              - "CA" is calving
              - "AI" is mating
              - "BCS" is body condition
            value in "Result"

        programme
        """;

    private const string Cows = "No;Tag;Born;Sex;Group\n1007;554000700041007;10/08/2021;cow;River\n1012;;2021-08-11;cow;River\n1019;;12/08/2021;cow;\n1033;;08/2021;calf;Hill\n";

    private const string Diary = "Day;No;What;Result\n20/07/2026;1007;CA;\n2026-07-21;1012;CA;\n22/07/2026;1019;CA;\n25/08/2026;1019;AI;\n18/09/2026;1007;BCS;4,8\n18/09/2026;1012;BCS;4.5\n18/09/2026;1033;BCS;3,5;9\n09/2026;1033;AI;\n18/09/2026;1019;rain;\n";

    private readonly TemporaryFarm _farm = new();

    public void Dispose() => _farm.Dispose();

    [Fact]
    public void The_two_files_give_the_same_answers()
    {
        _farm.Write("records/cows.csv", Cows);
        _farm.Write("records/diary.csv", Diary);
        _farm.Write("farm.byre", TemporaryFarm.Programme);
        _farm.Change("farm.byre", "\nprogramme", Sources.ReplaceLineEndings("\n").TrimEnd('\n'));

        var written = _farm.Run("records", "records", "--rules", "farm.byre", "--to", "read");
        written.Out.ShouldContain("Written: read/animals.csv and read/events.csv");
        _farm.Change("spring.byre", "\"records\"", "\"read\"");

        Answers("spring.byre").ShouldBe(Answers("farm.byre"));
        Answers("farm.byre").ShouldContain("\"animal\": \"1012\"");
    }

    [Fact]
    public void What_sets_promises_aside_and_is_in_neither_file_is_said()
    {
        _farm.Write("records/cows.csv", Cows.Replace(";Group\n", ";Group;Served\n", StringComparison.Ordinal).Replace(";River\n", ";River;yes\n", StringComparison.Ordinal).Replace(";cow;\n", ";cow;;\n", StringComparison.Ordinal).Replace(";Hill\n", ";Hill;\n", StringComparison.Ordinal));
        _farm.Write("records/diary.csv", Diary);
        _farm.Write("farm.byre", TemporaryFarm.Programme);
        _farm.Change("farm.byre", "\nprogramme", Sources.ReplaceLineEndings("\n").TrimEnd('\n'));

        _farm.Run("records", "records", "--rules", "farm.byre", "--to", "read").Out.ShouldContain("What sets promises aside here does not stand in them: “Served”. Of what was written promise nothing of mating");
    }

    [Fact]
    public void The_workbook_gives_the_same_answers()
    {
        _farm.Write("records/cows.csv", Cows);
        _farm.Write("records/diary.csv", Diary);
        _farm.Write("farm.byre", TemporaryFarm.Programme);
        _farm.Change("farm.byre", "\nprogramme", Sources.ReplaceLineEndings("\n").TrimEnd('\n'));
        _farm.Run("records", "records", "--rules", "farm.byre", "--to", "read", "--workbook").Out.ShouldContain("Written: read/herd.xlsx");
        _farm.Change("spring.byre", "\"records\"", "\"read\"");
        _farm.Change("spring.byre", "\nprogramme", """

              from "herd.xlsx", sheet "animals", a row for each animal
                animal in "animal"
                born in "born"
                sex in "sex"
                mob in "mob"
                official identity in "official identity"
              from "herd.xlsx", sheet "events", a row for each event
                date in "date"
                animal in "animal"
                kind in "kind"
                value in "value"
                unit in "unit"
                note in "note"
                recorded in "recorded"
                sample in "sample"
                method in "method"

            programme
            """.ReplaceLineEndings("\n").TrimEnd('\n'));

        Answers("spring.byre").ShouldBe(Answers("farm.byre"));
    }

    [Fact]
    public void A_folder_with_something_in_it_is_left_alone()
    {
        _farm.Run("records", "records", "--rules", "spring.byre", "--to", "records").ShouldBeOneClearLine("records is not empty; nothing was written");
        _farm.Run("records", "records", "--rules", "spring.byre", "--workbook").ShouldBeOneClearLine("--workbook wants --to DIR");
    }

    /// <summary>Who gets which answer, for which rules; not where the records stand.</summary>
    private string Answers(string programme) => string.Join(
        '\n', _farm.Run("draft", programme, "--format", "json").Out.Split('\n')
            .Select(line => line.Trim()).Where(line => new[] { "\"animal\":", "\"answer\":", "\"rule\":", "\"ready_", "\"reason\":" }.Any(line.StartsWith)));
}
