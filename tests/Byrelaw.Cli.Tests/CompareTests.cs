namespace Byrelaw.Cli.Tests;

public sealed class CompareTests : IDisposable
{
    private readonly TemporaryFarm _farm = new();

    public CompareTests()
    {
        _farm.Write("autumn.byre", TemporaryFarm.Programme + """

            change "Eight weeks calved"
              needs at least 93 days since last calving
              because "They were slow to clean up."
              agreed by "herd vet" on 2026-06-14

            change "Body condition"
              needs latest body condition in the last 45 days between 3.5 and 5.5
              because "They run lighter here."
              agreed by "herd vet" on 2026-06-14

            """);
    }

    public void Dispose() => _farm.Dispose();

    [Fact]
    public void A_file_compared_with_itself_says_the_same()
    {
        var run = _farm.Run("compare", "spring.byre", "spring.byre", "--records", "records");
        run.Code.ShouldBe(ExitCode.Done);
        run.Out.ShouldStartWith("The two say the same.\n");
        run.Err.ShouldBeEmpty();
    }

    [Fact]
    public void What_differs_is_told_and_which_change_each_animal_feels() => Snapshot.Verify(_farm.Run("compare", "spring.byre", "autumn.byre", "--records", "records").ToString());

    [Fact]
    public void A_page_says_the_same()
    {
        _farm.Run("compare", "spring.byre", "autumn.byre", "--records", "records", "--out", "page").Code.ShouldBe(ExitCode.Done);
        Snapshot.Verify(File.ReadAllText(_farm.At("page/compare.md")), extension: "md");
        File.ReadAllText(_farm.At("page/compare.html")).ShouldContain("<caption>");
    }

    [Fact]
    public void Json_tells_the_same()
    {
        var run = _farm.Run("compare", "spring.byre", "autumn.byre", "--records", "records", "--format", "json");
        var json = JsonDocument.Parse(run.Out).RootElement;
        json.GetProperty("same").GetBoolean().ShouldBeFalse();
        json.GetProperty("differences").EnumerateArray().Select(one => one.GetProperty("name").GetString()).ShouldBe(["Body condition", "Eight weeks calved"]);
        Snapshot.Verify(run.Out, extension: "json");
    }

    [Fact]
    public void What_was_agreed_or_entered_later_is_not_seen()
    {
        _farm.Run("compare", "spring.byre", "autumn.byre", "--known-on", "2026-06-13").Out.ShouldStartWith("The two say the same.\n");
        var known = _farm.Run("compare", "spring.byre", "autumn.byre", "--known-on", "2026-09-10", "--records", "records").Out;
        known.ShouldNotBe(_farm.Run("compare", "spring.byre", "autumn.byre", "--records", "records").Out);
    }

    [Fact]
    public void A_rule_file_without_a_programme_borrows_the_other_ones()
    {
        var run = _farm.Run("compare", "recipients.byre", "autumn.byre", "--records", "records");
        run.Code.ShouldBe(ExitCode.Done);
        run.Out.ShouldContain("Because of");
    }

    [Fact]
    public void Two_rule_files_have_no_day_to_judge_for() =>
        _farm.Run("compare", "recipients.byre", "vocabulary.byre", "--records", "records").ShouldBeOneClearLine("neither file has a programme");

    [Fact]
    public void A_file_with_errors_is_not_compared()
    {
        _farm.Change("autumn.byre", "at least 93 days", "at leest 93 days");
        var run = _farm.Run("compare", "spring.byre", "autumn.byre");
        run.Code.ShouldBe(ExitCode.Bad);
        run.Out.ShouldBeEmpty();
        run.Err.ShouldContain("Two rulebooks are compared once both can be read");
    }

    [Fact]
    public void The_page_to_be_signed_is_for_one_file() => _farm.Run("check", "spring.byre", "autumn.byre", "--practice").ShouldBeOneClearLine("--practice is for one file");

    [Fact]
    public void A_waiver_for_an_animal_that_is_not_in_the_records_is_told()
    {
        File.AppendAllText(_farm.At("spring.byre"), "\nwaive \"Body condition\" for \"1432\"\n  until 2026-10-31\n  because \"b\"\n  agreed by \"vet\" on 2026-09-01\n");
        string[][] commands = [["draft", "spring.byre"], ["check", "spring.byre"], ["why", "spring.byre", "1007"], ["plan", "spring.byre"]];
        foreach (var command in commands)
        {
            var said = _farm.Run(command).Err;
            said.ShouldContain("spring.byre:12:", Case.Sensitive, command[0]);
            said.ShouldContain("J0102: no animal `1432` in records/animals.csv");
            said.ShouldContain("help: did you mean `1423`? (records/animals.csv, line 6)");
        }

        Directory.Delete(_farm.At("records"), recursive: true);
        _farm.Run("check", "spring.byre").Code.ShouldBe(ExitCode.Done, "rules are checked before there are records");
    }
}
