namespace Byrelaw.Cli.Tests;

public sealed class CheckTests : IDisposable
{
    private readonly TemporaryFarm _farm = new();

    public void Dispose() => _farm.Dispose();

    [Fact]
    public void A_good_file_ends_with_0_and_says_what_is_in_it() => Snapshot.Verify(_farm.Run("check", "spring.byre").ToString());

    [Fact]
    public void All_problems_of_a_file_are_told_at_once_and_end_with_1()
    {
        _farm.Change("recipients.byre", "since last calving\n  because", "since last clving\n  because");
        _farm.Change("recipients.byre", "between 4.0 and 5.5", "betwen 4.0 and 5.5");
        Snapshot.Verify(_farm.Run("check", "spring.byre").ToString());
    }

    [Fact]
    public void Check_says_that_nobody_can_be_judged_only_where_nobody_is()
    {
        // Who accepts a trouble of the base rules has to sign for it; unsigned it is an error, but it changes no answer.
        _farm.Write("spring.byre", TemporaryFarm.Programme + "\naccept \"Body condition\" as never met\n  because \"x\"\n");

        var run = _farm.Run("check", "spring.byre");

        run.Code.ShouldBe(ExitCode.Bad);
        run.Err.ShouldEndWith("1 error. The rules can be read, and animals are judged by them; what the errors touch is in doubt until it is mended.\n");
        _farm.Run("draft", "spring.byre", "--format", "json").Out.ShouldContain("\"answer\": \"on_course\"");
        _farm.Change("recipients.byre", "between 4.0 and 5.5", "betwen 4.0 and 5.5");
        _farm.Run("check", "spring.byre").Err.ShouldContain("Nobody can be judged until they are mended");
    }

    [Fact]
    public void A_programme_with_an_error_that_draws_up_no_list_leaves_nobody_to_judge()
    {
        _farm.Change("spring.byre", "judged from first transfer", "judged from first treatment");

        _farm.Run("check", "spring.byre").Err.ShouldContain("Nobody can be judged until they are mended");
    }

    [Fact]
    public void A_problem_in_a_file_that_two_others_use_is_told_once()
    {
        _farm.Change("vocabulary.byre", "on scale 1 to 10", "on scale 1 too 10");
        var run = _farm.Run("check", "spring.byre", "recipients.byre");
        run.Code.ShouldBe(ExitCode.Bad);
        run.Err.Split('\n').Count(line => line.StartsWith("vocabulary.byre:12:", StringComparison.Ordinal)).ShouldBe(1, run.Err);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Whoever_watches_is_told_how_to_learn_what_a_code_means_and_a_pipe_is_not(bool watches)
    {
        _farm.Change("recipients.byre", "between 4.0 and 5.5", "betwen 4.0 and 5.5");
        using var err = new StringWriter { NewLine = "\n" };
        ByrelawApp.Run(["check", "spring.byre"], Doors.Plain(TextWriter.Null, err, _farm.Folder) with { ShowsProgress = watches });
        err.ToString().Contains("What such a code means, with an example: byrelaw check --explain B0", StringComparison.Ordinal).ShouldBe(watches);
    }

    [Theory]
    [InlineData("B0204")]
    [InlineData("b0706")]
    [InlineData("B1020")]
    [InlineData("R0123")]
    public void A_code_is_explained(string code) => Snapshot.Verify(_farm.Run("check", "--explain", code).ToString(), code);

    [Fact]
    public void An_unknown_code_ends_with_2_and_names_the_nearest()
    {
        var run = _farm.Run("check", "--explain", "B0240");
        run.Code.ShouldBe(ExitCode.CouldNot);
        run.Out.ShouldBeEmpty();
        run.Err.ShouldBe("byrelaw: no problem has the code B0240; did you mean B0204?\n");
    }

    [Fact]
    public void A_file_that_is_not_there_ends_with_2_and_the_others_are_still_checked()
    {
        var run = _farm.Run("check", "nothing.byre", "spring.byre");
        run.Code.ShouldBe(ExitCode.CouldNot);
        run.Err.ShouldBe("byrelaw: no such file: nothing.byre\n");
        run.Out.ShouldStartWith("spring.byre: ");
    }

    [Fact]
    public void A_folder_is_no_rule_file() => _farm.Run("check", "records").ShouldBeOneClearLine("records is a folder");

    [Fact]
    public void Json_stands_alone_on_the_output_and_tells_the_same_problems()
    {
        _farm.Change("recipients.byre", "since last calving\n  because", "since last clving\n  because");
        var run = _farm.Run("check", "spring.byre", "--format", "json");
        run.Code.ShouldBe(ExitCode.Bad);
        run.Err.ShouldBeEmpty();
        var problem = JsonDocument.Parse(run.Out).RootElement.GetProperty("problems").EnumerateArray().First();
        problem.EnumerateObject().Select(property => property.Name).ShouldBe(["code", "severity", "file", "line", "column", "length", "found", "expected", "help", "correction", "example"]);
        problem.GetProperty("file").GetString().ShouldBe("recipients.byre");
        problem.GetProperty("line").GetInt32().ShouldBe(6);
    }

    [Fact]
    public void Json_holds_the_animal_that_shows_a_trouble()
    {
        _farm.Write("tight.byre", "use \"recipients.byre\"\nrules for recipients\nrule \"Not rested\"\n  needs at most 40 days since last calving\n  because \"Made up.\"\n  source \"made up\"\n");
        var run = _farm.Run("check", "tight.byre", "--format", "json");
        var problem = JsonDocument.Parse(run.Out).RootElement.GetProperty("problems").EnumerateArray().Single(problem => problem.GetProperty("code").GetString() == "B1103");
        var lines = problem.GetProperty("example").EnumerateArray().Select(line => line.GetString()!).ToList();
        lines[0].ShouldStartWith("cow born ");
        lines.ShouldContain(line => line.StartsWith("calving ", StringComparison.Ordinal));
        lines[^1].ShouldStartWith("judged on ");
    }

    private const string Example =
        """

        example "Six weeks calved waits two more"
          cow born 2021-08-10
          calving 2026-09-07
          judged on 2026-10-19
          expect "Eight weeks calved" not met, until 2026-11-02

        """;

    [Fact]
    public void Examples_that_come_out_as_expected_are_counted()
    {
        _farm.Write("recipients.byre", TemporaryFarm.Rules + Example);
        var run = _farm.Run("check", "spring.byre");
        run.Code.ShouldBe(ExitCode.Done);
        run.Out.ShouldBe("spring.byre: 3 rules for recipients, no errors, 1 example, all as expected\n");
    }

    [Fact]
    public void An_example_that_comes_out_otherwise_ends_with_1_and_is_explained()
    {
        _farm.Write("recipients.byre", TemporaryFarm.Rules + Example.Replace("2026-11-02", "2026-11-03", StringComparison.Ordinal));
        Snapshot.Verify(_farm.Run("check", "recipients.byre", "spring.byre").ToString());
    }

    [Fact]
    public void Coverage_says_what_no_example_shows()
    {
        _farm.Write("recipients.byre", TemporaryFarm.Rules + Example);
        Snapshot.Verify(_farm.Run("check", "recipients.byre", "--coverage").ToString());
    }

    [Fact]
    public void Coverage_is_told_to_programs_too()
    {
        _farm.Write("recipients.byre", TemporaryFarm.Rules + Example);
        var run = _farm.Run("check", "recipients.byre", "--coverage", "--format", "json");
        run.Err.ShouldBeEmpty();
        Snapshot.Verify(run.Out, extension: "json");
    }
}
