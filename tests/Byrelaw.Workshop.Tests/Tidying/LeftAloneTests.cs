namespace Byrelaw.Workshop.Tests.Tidying;

/// <summary>What cannot be understood to the last word is not touched.</summary>
public sealed class LeftAloneTests
{
    [Theory]
    [InlineData("event heat\nrules for x\nrule \"A\"\n  neds no heat ever\n", "B0401")]
    [InlineData("event heat\nrules for x\nrule \"A\"\n  needs no haet ever\n  because \"b\"\n", "B0204")]
    [InlineData("event \"heat\n", "B0101")]
    public void A_file_with_an_error_is_left_alone_with_all_its_errors(string text, string code)
    {
        var result = Tidied.Result(text);

        result.Text.ShouldBeNull();
        result.WouldChange.ShouldBeNull();
        result.Errors.Select(error => error.Code).ShouldContain(code);
        DiagnosticText.Of(result.Errors).ShouldBe(DiagnosticText.Of(Rules.Read(text).Problems.Where(problem => problem.Severity == Severity.Error)));
    }

    [Fact]
    public void An_error_in_a_used_file_leaves_the_using_one_alone_for_its_rules_are_not_known()
    {
        var files = new RuleFilesInMemory().Add("farm.byre", "use \"words.byre\"\ndefine it\nno heat ever").Add("words.byre", "event heat\nevent \"\n");

        Tidier.Tidy("farm.byre", files)!.Errors.ShouldAllBe(error => error.File == "words.byre");
        Tidier.Tidy("farm.byre", files)!.Text.ShouldBeNull();
    }

    [Fact]
    public void A_warning_is_no_reason_to_leave_a_file_alone() =>
        Tidied.Text("event heat\nrules for x\nrule \"A\"\nneeds no heat ever\n").ShouldEndWith("\n\nrule \"A\"\n  needs no heat ever\n");

    [Fact]
    public void Only_the_file_itself_is_tidied_not_those_it_uses()
    {
        var files = new RuleFilesInMemory().Add("farm.byre", "use   \"words.byre\"\ndefine it\nno heat ever").Add("words.byre", "event    heat");

        Tidier.Tidy("farm.byre", files)!.Text.ShouldBe("use \"words.byre\"\n\ndefine it\n  no heat ever\n");
    }

    [Fact]
    public void A_file_that_is_not_there_has_no_result() => Tidier.Tidy("farm.byre", new RuleFilesInMemory()).ShouldBeNull();

    [Fact]
    public void A_condition_that_is_a_text_alone_does_not_run_on_from_a_reason_above_it()
    {
        const string text = "event heat\n\ndefine \"days open\"\n  no heat ever\n\nrules for x\n\nprefer \"A\"\n  counts 2\n  \"days open\"\n  because \"b\"\n";

        Tidied.Text(text).ShouldBe(text);
    }
}
