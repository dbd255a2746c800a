using System.Text;

namespace Byrelaw.Cli.Tests;

/// <summary>The world can fail at any time: one clear line and exit code 2, never a stack trace.</summary>
public sealed class FailuresTests : IDisposable
{
    private readonly TemporaryFarm _farm = new();

    public void Dispose() => _farm.Dispose();

    [Theory]
    [InlineData("why", "spring.byre", "1007")]
    [InlineData("check", "spring.byre", "recipients.byre")]
    [InlineData("records", "records", "--format=json")]
    [InlineData("--version", null, null)]
    public void When_nobody_reads_the_answers_any_more(string a, string? b, string? c)
    {
        var args = new[] { a, b, c }.OfType<string>().ToArray();
        using var err = new StringWriter { NewLine = "\n" };
        using var broken = new BrokenPipe();
        ByrelawApp.Run(args, Doors.Plain(broken, err, _farm.Folder)).ShouldBe(ExitCode.CouldNot);
        err.ToString().ShouldEndWith("byrelaw: Broken pipe\n");
        err.ToString().ShouldNotContain("   at ");
    }

    [Fact]
    public void When_nobody_reads_the_problems_either()
    {
        using var broken = new BrokenPipe();
        ByrelawApp.Run(["check", "nothing.byre"], Doors.Plain(broken, broken, _farm.Folder)).ShouldBe(ExitCode.CouldNot);
    }

    [Fact]
    public void When_a_used_file_is_a_folder()
    {
        File.Delete(_farm.At("vocabulary.byre"));
        Directory.CreateDirectory(_farm.At("vocabulary.byre"));
        var run = _farm.Run("check", "spring.byre");
        run.Code.ShouldBe(ExitCode.Bad);
        run.Err.ShouldContain("recipients.byre:1:");
    }

    /// <summary>A writer whose reader has gone.</summary>
    private sealed class BrokenPipe : TextWriter
    {
        public override Encoding Encoding => Encoding.UTF8;

        public override void Write(char value) => throw new IOException("Broken pipe");
    }
}
