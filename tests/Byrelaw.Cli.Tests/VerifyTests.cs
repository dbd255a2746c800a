namespace Byrelaw.Cli.Tests;

/// <summary>A kept report is judged again, and every way in which it may no longer stand is told apart.</summary>
public sealed class VerifyTests : IDisposable
{
    private readonly TemporaryFarm _farm = new();

    public VerifyTests() => _farm.Run("draft", "spring.byre", "--known-on", "2026-09-19").Code.ShouldBe(ExitCode.Done);

    public void Dispose() => _farm.Dispose();

    [Theory]
    [InlineData("out")]
    [InlineData("out/draft.json")]
    [InlineData("out/index.md")]
    public void From_the_same_inputs_come_the_same_answers(string report)
    {
        var run = _farm.Run("verify", report);
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        run.Err.ShouldBeEmpty();
        Snapshot.Verify(run.ToString(), "all");
    }

    [Fact]
    public void The_output_for_programs_alone_can_be_verified_too()
    {
        _farm.Write("kept.json", _farm.Run("draft", "spring.byre", "--on", "2026-10-27", "--format", "json").Out);
        _farm.Run("verify", "kept.json").Code.ShouldBe(ExitCode.Done);
    }

    [Fact]
    public void Changed_records_are_told_and_whose_answers_they_change()
    {
        _farm.Change("records/events.csv", "2026-09-18,1033,body condition,3.5", "2026-09-18,1033,body condition,4.5");
        Snapshot.Verify(Told(_farm.Run("verify", "out")));
    }

    [Fact]
    public void Changed_rules_are_told_even_where_no_answer_changes()
    {
        _farm.Change("recipients.byre", "A thin cow has nothing to spare for a pregnancy.", "A thin cow has nothing to spare.");
        Snapshot.Verify(Told(_farm.Run("verify", "out")));
    }

    [Fact]
    public void A_list_edited_by_hand_is_told_with_the_animals_edited()
    {
        _farm.Change("out/recipients/draft.csv", ",No,", ",Ready,");
        _farm.Change("out/animals/1012.md", "1012", "1021");
        Snapshot.Verify(Told(_farm.Run("verify", "out")));
    }

    [Fact]
    public void Answers_edited_in_the_file_for_programs_are_told_with_the_animals()
    {
        _farm.Change("out/draft.json", "\"answer\": \"no\"", "\"answer\": \"ready\"");
        Snapshot.Verify(Told(_farm.Run("verify", "out")));
    }

    [Fact]
    public void A_page_that_is_gone_is_told()
    {
        File.Delete(_farm.At("out/animals/1007.html"));
        var run = _farm.Run("verify", "out");
        run.Code.ShouldBe(ExitCode.Bad);
        run.Out.ShouldContain("No longer in the report: animals/1007.html.");
    }

    /// <summary>Neither the inputs nor the list of files shows anything: it may have been the program.</summary>
    [Theory]
    [InlineData("same", "byrelaw 0.1.0")]
    [InlineData("other", "byrelaw 0.0.1")]
    public void Other_answers_from_the_same_inputs_are_laid_to_the_version_or_to_the_program(string name, string version)
    {
        _farm.Change("out/draft.json", "\"answer\": \"no\"", "\"answer\": \"ready\"");
        _farm.Change("out/draft.json", "\"byrelaw 0.1.0\"", $"\"{version}\"");
        var lines = File.ReadAllLines(_farm.At("out/report-files.txt"));
        var digest = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(_farm.At("out/draft.json"))));
        File.WriteAllLines(_farm.At("out/report-files.txt"), lines.Select(line => line.EndsWith("  draft.json", StringComparison.Ordinal) ? $"{digest}  draft.json" : line));
        Snapshot.Verify(Told(_farm.Run("verify", "out")), name);
    }

    [Fact]
    public void Inputs_that_have_moved_are_asked_for()
    {
        Directory.CreateDirectory(_farm.At("old"));
        foreach (var name in new[] { "spring.byre", "recipients.byre", "vocabulary.byre", "records" })
        {
            Directory.Move(_farm.At(name), _farm.At("old/" + name));
        }

        _farm.Run("verify", "out").ShouldBeOneClearLine("spring.byre, which the report was drawn up from, is not there; say with --programme FILE where it is now");
        _farm.Run("verify", "out", "--programme", "old/spring.byre").Code.ShouldBe(ExitCode.Done);
        Directory.Move(_farm.At("old/records"), _farm.At("old/books"));
        _farm.Run("verify", "out", "--programme", "old/spring.byre").ShouldBeOneClearLine("records");
    }

    [Fact]
    public void The_rules_may_come_out_of_a_pack()
    {
        _farm.Run("pack", "spring.byre", "-o", "kept.pack").Code.ShouldBe(ExitCode.Done);
        _farm.Change("recipients.byre", "at least 56 days", "at least 99 days");
        _farm.Run("verify", "out").Code.ShouldBe(ExitCode.Bad);
        _farm.Run("verify", "out", "--rules", "kept.pack").Code.ShouldBe(ExitCode.Done);
        _farm.Run("verify", "out", "--rules", "spring.byre").ShouldBeOneClearLine("spring.byre cannot be used");
    }

    [Fact]
    public void What_is_no_report_is_told()
    {
        _farm.Run("verify", "records").ShouldBeOneClearLine("records does not say what it was drawn up from");
        _farm.Run("verify", "nothing").ShouldBeOneClearLine("no such file or folder: nothing");
        _farm.Write("out/draft.json", "{ \"lists\": 3 }");
        _farm.Run("verify", "out").ShouldBeOneClearLine("out does not say what it was drawn up from");
    }

    private static string Told(Run run)
    {
        run.Code.ShouldBe(ExitCode.Bad, run.ToString());
        return Without.Digests(run.ToString());
    }
}
