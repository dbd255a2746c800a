namespace Byrelaw.Cli.Tests;

public sealed class RecordsTests : IDisposable
{
    private readonly TemporaryFarm _farm = new();

    public void Dispose() => _farm.Dispose();

    [Fact]
    public void A_date_in_digits_of_another_script_is_told_with_the_date_it_means()
    {
        _farm.Change("records/events.csv", "2026-07-20,1007", "２０２６-０７-２０,1007");
        _farm.Change("records/animals.csv", "2021-08-11", "٢٠٢١-٠٨-١١");

        var run = _farm.Run("records", "records", "--rules", "spring.byre");

        run.Err.ShouldContain("write `2026-07-20`");
        run.Err.ShouldContain("write `2021-08-11`");
    }

    [Fact]
    public void Records_are_summed_up_with_the_words_of_the_programme_beside_them() => Snapshot.Verify(_farm.Run("records", "records").ToString());

    [Fact]
    public void What_is_wrong_is_told_and_ends_with_1()
    {
        _farm.Change("records/events.csv", "2026-09-07,1423,calving", "2026-09-07,1432,calving");
        _farm.Change("records/events.csv", "body condition,3.5", "body condition,35");
        Snapshot.Verify(_farm.Run("records", "records").ToString());
        var json = _farm.Run("records", "records", "--format", "json");
        json.Err.ShouldBeEmpty();
        json.Code.ShouldBe(ExitCode.Bad);
        JsonDocument.Parse(json.Out).RootElement.GetProperty("problems").GetArrayLength().ShouldBe(2);
    }

    [Fact]
    public void Without_a_programme_the_base_words_are_those_of_the_records()
    {
        File.Delete(_farm.At("spring.byre"));
        _farm.Run("records", "records").Out.ShouldContain("read with the words of base vocabulary edition 1");
        File.Move(_farm.At("records/animals.csv"), _farm.At("records/cows.csv"));
        _farm.Run("records", "records").ShouldBeOneClearLine("byrelaw records records --suggest");
        File.Move(_farm.At("records/cows.csv"), _farm.At("records/animals.csv"));
        _farm.Run("records", "records", "--rules", "vocabulary.byre").Code.ShouldBe(ExitCode.Done);
    }

    [Fact]
    public void The_files_of_an_export_are_led_to_the_lines_that_read_them()
    {
        _farm.Write("export/animals.csv", "Cow No;Born\n1;2020-01-01\n");
        _farm.Run("records", "export").ShouldBeOneClearLine("byrelaw records export --suggest");
        _farm.Run("draft", "export/animals.csv").ShouldBeOneClearLine("export/animals.csv holds records and no rules; to begin with a farm's own files: byrelaw new NAME --from FOLDER");
    }

    /// <summary>The mend that a doubt offers mends it, also of a text that a line of the source gives its meaning.</summary>
    [Fact]
    public void A_service_that_may_be_a_bulls_going_counts_once_a_person_says_that_it_is_none()
    {
        _farm.Write("farm/records/cows.csv", "No,Born\n1,2020-01-01\n2,2020-01-02\n");
        _farm.Write("farm/records/services.csv", "No,Date,How\n1,2026-05-01,Natural\n2,2026-05-02,Natural\n");
        const string Rules = """
            use base vocabulary edition 1

            records "records"
              up to 2026-06-30
              complete for mating, bull in, bull out since 2026-01-01
              from "cows.csv", a row for each animal
                animal in "No"
                born in "Born"
                sex is F
              from "services.csv", a row for each event
                animal in "No"
                date in "Date"
                kind in "How"
                  - "Natural" is mating
                  - "in" is "bull in"
                  - "out" is "bull out"

            """;
        _farm.Write("farm/farm.byre", Rules);
        _farm.Run("records", "farm/records", "--rules", "farm/farm.byre").Out.ShouldContain("“leave out Natural, which is not bull in”");
        _farm.Write("farm/farm.byre", Rules.Replace("  from \"cows.csv\"", "  leave out Natural, which is not bull in\n  from \"cows.csv\"", StringComparison.Ordinal));
        var run = _farm.Run("records", "farm/records", "--rules", "farm/farm.byre");
        run.Out.ShouldNotContain("may be bull in");
        run.Out.ShouldContain("mating");
    }

    [Fact]
    public void Suggested_lines_are_tidy_and_read_the_files()
    {
        var run = _farm.Run("records", "records", "--suggest");
        run.Code.ShouldBe(ExitCode.Done);
        run.Err.ShouldBeEmpty();
        Snapshot.Verify(run.Out);
        _farm.Write("again.byre", "use base vocabulary edition 1\n\n" + run.Out);
        var tidy = _farm.Run("tidy", "again.byre", "--check");
        tidy.Code.ShouldBe(ExitCode.Done, tidy.Out);
        _farm.Run("records", "records", "--rules", "again.byre").Out.ShouldContain("calving ");
    }

    [Fact]
    public void Several_programmes_over_the_same_records_have_to_be_told_apart()
    {
        File.Copy(_farm.At("spring.byre"), _farm.At("autumn.byre"));
        _farm.Run("records", "records").ShouldBeOneClearLine("autumn.byre, spring.byre");
        _farm.Run("records", "records", "--rules", "autumn.byre").Code.ShouldBe(ExitCode.Done);
    }

    [Fact]
    public void A_folder_that_is_not_there_is_named()
    {
        _farm.Run("records", "nothing").ShouldBeOneClearLine("no such folder: nothing");
        _farm.Run("records", "spring.byre").ShouldBeOneClearLine("spring.byre is a file");
    }
}
