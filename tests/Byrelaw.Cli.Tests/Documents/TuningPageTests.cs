namespace Byrelaw.Cli.Tests.Documents;

/// <summary>What the page on tuning shows is what the program prints.</summary>
public sealed class TuningPageTests
{
    [Fact]
    public void What_the_page_shows_is_what_the_program_prints()
    {
        var shown = 0;
        ExecutedPage.Verify("docs/tuning.md", fence =>
        {
            shown++;
            return Run(Arguments(fence.Rest)).TrimEnd('\n') + "\n";
        });

        shown.ShouldBe(2);
    }

    /// <summary>As a shell takes them apart: what stands in quotes is one.</summary>
    private static string[] Arguments(string line) =>
        [.. line.Split('"').SelectMany((part, i) => i % 2 == 1 ? [part] : part.Split(' ', StringSplitOptions.RemoveEmptyEntries))];

    private static string Run(string[] args)
    {
        using var @out = new StringWriter { NewLine = "\n" };
        using var err = new StringWriter { NewLine = "\n" };
        ByrelawApp.Run(args, Doors.Plain(@out, err, Repository.Root) with { Clock = new FixedClock { Now = new(2026, 10, 12, 17, 0, 0, TimeSpan.Zero) } }).ShouldBe(ExitCode.Done, err.ToString());
        return @out.ToString();
    }
}
