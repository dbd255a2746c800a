using CsCheck;

namespace Byrelaw.Cli.Tests;

public sealed class ArgumentsTests : IDisposable
{
    private readonly TemporaryFarm _farm = new();

    public void Dispose() => _farm.Dispose();

    [Fact]
    public void The_version_is_the_one_that_reports_carry()
    {
        var run = _farm.Run("--version");
        run.Code.ShouldBe(ExitCode.Done);
        run.Out.ShouldBe(Reporting.JudgedWith.NameAndVersion + "\n");
        run.Out.ShouldMatch(@"^byrelaw \d+\.\d+\.\d+\S*\n$");
    }

    [Theory]
    [InlineData("")]
    [InlineData("new")]
    [InlineData("check")]
    [InlineData("compare")]
    [InlineData("verify")]
    [InlineData("records")]
    [InlineData("draft")]
    [InlineData("why")]
    [InlineData("language-server")]
    public void Help_reads_as_approved(string command)
    {
        string[] args = command.Length == 0 ? ["--help"] : [command, "--help"];
        var run = _farm.Run(args);
        run.Code.ShouldBe(ExitCode.Done);
        run.Err.ShouldBeEmpty();
        // The name under which the tests run stands where the program's own would.
        Snapshot.Verify(run.Out.Replace("Byrelaw.Cli.Tests", "byrelaw", StringComparison.Ordinal), command);
    }

    [Fact]
    public void Wrong_arguments_end_with_2_and_say_what_is_wrong()
    {
        string[][] wrong =
        [
            [], ["judge"], ["recrods", "records"], ["draft"], ["why", "spring.byre"], ["draft", "spring.byre", "--on", "20/10/2026"], ["draft", "spring.byre", "--known-on", "tomorrow"],
            ["draft", "spring.byre", "--format", "xml"], ["draft", "spring.byre", "--oot", "x"], ["check", "--format"], ["draft", "spring.byre", "--out", ""], ["new", " "],
        ];
        var said = wrong.Select(args =>
        {
            var run = _farm.Run(args);
            run.Code.ShouldBe(ExitCode.CouldNot, string.Join(' ', args));
            run.Out.ShouldBeEmpty();
            return $"$ byrelaw {string.Join(' ', args.Select(arg => arg.Trim().Length == 0 ? $"'{arg}'" : arg))}\n{run.Err}";
        });
        Snapshot.Verify(string.Join("\n", said));
    }

    [Fact]
    public void No_arguments_whatever_bring_it_down() =>
        Gen.OneOf(Gen.OneOf("new", "check", "records", "draft", "why", "--on", "--known-on", "--out", "--format", "json", "text", "--all", "--rules", "spring.byre",
            "records", "1007", "2026-10-20", "--", "-", "@file", "", ".", "..", "vocabulary.byre", "\0", "[suggest]", "[diagram]", "--version", "-h"), Gen.String).Array[0, 6].Hold(args =>
        {
            using var farm = new TemporaryFarm();
            var run = farm.Run(args);
            run.Code.ShouldBeInRange(0, 2);
            run.Err.ShouldNotContain("   at ");
            run.Err.ShouldNotContain("inside the program");
        }, count: 150);
}
