namespace Byrelaw.Cli.Tests;

public sealed class DraftTests : IDisposable
{
    private readonly TemporaryFarm _farm = new();

    public void Dispose() => _farm.Dispose();

    [Fact]
    public void A_draft_writes_its_report_and_sums_it_up()
    {
        Snapshot.Verify(Without.Digests(_farm.Run("draft", "spring.byre").ToString()));
        Files("out").ShouldBe(
        [
            .. new[] { "1007", "1012", "1019", "1033", "1423" }.SelectMany(number => new[] { $"animals/{number}.html", $"animals/{number}.md" }),
            "draft.json", "index.html", "index.md", "page.css", "page.js",
            "recipients/draft.csv", "recipients/index.html", "recipients/index.md", "report-files.txt", "rules.html", "rules.md",
        ]);
    }

    [Fact]
    public void The_folder_can_be_chosen_and_a_report_there_is_replaced()
    {
        _farm.Run("draft", "spring.byre", "--out", "a/b").Code.ShouldBe(ExitCode.Done);
        _farm.Change("records/animals.csv", "1423,554000700041423,2022-08-14,F,,Hill\n", "");
        _farm.Change("records/events.csv", "2026-09-07,1423,calving,,,,\n", "");
        _farm.Change("records/events.csv", "2026-09-18,1423,body condition,5.0,,,\n", "");
        _farm.Run("draft", "spring.byre", "--out", "a/b").Code.ShouldBe(ExitCode.Done);
        Files("a/b").ShouldNotContain("animals/1423.md");
        Files("a").ShouldAllBe(file => file.StartsWith("b/"));
    }

    [Fact]
    public void Someones_folder_is_left_alone()
    {
        _farm.Run("draft", "spring.byre", "--out", "records").ShouldBeOneClearLine("not a report");
        Files("records").ShouldBe(["animals.csv", "events.csv"]);
        _farm.Run("draft", "spring.byre", "--out", ".").ShouldBeOneClearLine("not a report");
        _farm.Run("draft", "spring.byre", "--out", "spring.byre/x").ShouldBeOneClearLine("spring.byre");
    }

    [Fact]
    public void Json_stands_alone_on_the_output_and_writes_no_report_unless_asked()
    {
        var run = _farm.Run("draft", "spring.byre", "--format", "json");
        run.Code.ShouldBe(ExitCode.Done);
        var list = JsonDocument.Parse(run.Out).RootElement.GetProperty("lists")[0];
        list.GetProperty("judged_from").GetString().ShouldBe("2026-10-20");
        list.GetProperty("animals").EnumerateArray().Select(animal => animal.GetProperty("animal").GetString()).ShouldBe(["1007", "1012", "1019", "1033", "1423"]);
        Directory.Exists(_farm.At("out")).ShouldBeFalse();
        _farm.Run("draft", "spring.byre", "--format", "json", "--out", "out").Code.ShouldBe(ExitCode.Done);
        Directory.Exists(_farm.At("out")).ShouldBeTrue();
    }

    [Fact]
    public void Another_day_can_be_judged()
    {
        var run = _farm.Run("draft", "spring.byre", "--format", "json", "--on", "2026-09-20");
        var list = JsonDocument.Parse(run.Out).RootElement.GetProperty("lists")[0];
        list.GetProperty("judged_from").GetString().ShouldBe("2026-09-20");
        list.GetProperty("judged_to").GetString().ShouldBe("2026-09-20");
    }

    [Fact]
    public void What_was_not_yet_entered_is_not_seen()
    {
        var known = JsonDocument.Parse(_farm.Run("draft", "spring.byre", "--format", "json", "--known-on", "2026-09-10").Out).RootElement;
        known.GetProperty("known_day").GetString().ShouldBe("2026-09-10");
        known.GetProperty("lists")[0].GetProperty("counts").GetProperty("ready").GetInt32().ShouldBe(0);
    }

    [Fact]
    public void With_a_broken_rule_nobody_is_ready_and_the_end_is_1()
    {
        _farm.Change("recipients.byre", "at least 56 days since", "at lest 56 days since");
        var run = _farm.Run("draft", "spring.byre", "--format", "json");
        run.Code.ShouldBe(ExitCode.Bad);
        run.Err.ShouldContain("recipients.byre:6:");
        var counts = JsonDocument.Parse(run.Out).RootElement.GetProperty("lists")[0].GetProperty("counts");
        counts.GetProperty("ready").GetInt32().ShouldBe(0);
        counts.GetProperty("on_course").GetInt32().ShouldBe(0);
    }

    [Fact]
    public void A_row_that_cannot_be_read_is_told()
    {
        _farm.Change("records/events.csv", "2026-09-18,1007,body condition,4.8,,,", "18/9/2026,1007,body condition,4.8,,,");
        Snapshot.Verify(Without.Digests(_farm.Run("draft", "spring.byre").ToString()));
    }

    [Theory]
    [InlineData("draft", "spring.byre", "--out", "strict")]
    [InlineData("why", "spring.byre", "1007")]
    [InlineData("plan", "spring.byre", "--out", "strict")]
    [InlineData("tune", "spring.byre", "Eight weeks calved")]
    [InlineData("compare", "spring.byre", "autumn.byre", "--records", "records")]
    public void A_row_that_cannot_be_read_is_the_exit_codes_business_for_those_who_ask(params string[] args)
    {
        File.Copy(_farm.At("spring.byre"), _farm.At("autumn.byre"), overwrite: true);
        _farm.Run([.. args, "--strict"]).Code.ShouldBe(ExitCode.Done);
        _farm.Change("records/events.csv", "2026-09-18,1007,body condition,4.8,,,", "18/9/2026,1007,body condition,4.8,,,");

        _farm.Run(args).Code.ShouldBe(ExitCode.Done);
        _farm.Run([.. args, "--strict"]).Code.ShouldBe(ExitCode.Bad);
    }

    [Fact]
    public void An_animal_named_that_is_not_in_the_records_is_an_error_that_offers_the_nearest()
    {
        _farm.Change("spring.byre", "recipients from females", "recipients from \"1007\", \"1432\"");
        var run = _farm.Run("draft", "spring.byre");
        run.Code.ShouldBe(ExitCode.Bad);
        run.Err.ShouldContain("spring.byre:10:");
        run.Err.ShouldContain("no animal `1432` in records/animals.csv");
        run.Err.ShouldContain("did you mean `1423`?");
    }

    [Fact]
    public void A_rule_file_on_its_own_is_no_programme()
    {
        _farm.Run("draft", "recipients.byre").ShouldBeOneClearLine("has no \"programme\" line");
        _farm.Run("draft", "nothing.byre").ShouldBeOneClearLine("no such file: nothing.byre");
    }

    [Fact]
    public void Records_that_are_not_there_are_named()
    {
        File.Delete(_farm.At("records/events.csv"));
        _farm.Run("draft", "spring.byre").ShouldBeOneClearLine("records/events.csv");
        Directory.Delete(_farm.At("records"), recursive: true);
        _farm.Run("draft", "spring.byre").ShouldBeOneClearLine("records");
    }

    private List<string> Files(string folder) =>
        [.. Directory.EnumerateFiles(_farm.At(folder), "*", SearchOption.AllDirectories).Select(file => Path.GetRelativePath(_farm.At(folder), file).Replace('\\', '/')).Order(StringComparer.Ordinal)];
}
