namespace Byrelaw.Cli.Tests.Documents;

/// <summary>
/// What the README shows is what the program writes: <c>markdown FILE FIRST LAST</c> shows lines of a draft's file, <c>byre FILE
/// FIRST LAST</c> lines of a file of the repository, <c>text ARGUMENTS</c> what a command prints.
/// </summary>
public sealed class ReadmeTests : IDisposable
{
    private readonly string _out = Directory.CreateTempSubdirectory("byrelaw-readme-").FullName;

    public void Dispose() => Directory.Delete(_out, recursive: true);

    [Fact]
    public void What_the_README_shows_is_what_the_program_writes()
    {
        var shown = 0;
        Run("draft", "examples/withy-bend/spring-2026.byre", "--out", Path.Combine(_out, "draft")).Code.ShouldBe(ExitCode.Done);

        ExecutedPage.Verify("README.md", fence =>
        {
            if (fence.Rest.Length == 0)
            {
                return null;
            }

            shown++;
            var words = fence.Rest.Split(' ');
            return fence.Language switch
            {
                "markdown" => Lines(Path.Combine(_out, "draft", words[0]), words),
                "byre" => Lines(Repository.At(words[0]), words),
                _ => Run(words).Out.TrimEnd('\n') + "\n",
            };
        });

        shown.ShouldBe(3);
    }

    [Fact]
    public void The_README_names_the_command_that_the_build_server_runs()
    {
        const string Command = "dotnet test --solution Byrelaw.slnx -c Release";

        File.ReadAllText(Repository.At("README.md")).ShouldContain($"\n{Command}\n");
        File.ReadAllText(Repository.At(".ci/run")).ShouldContain(Command);
    }

    private static string Lines(string path, string[] words) => string.Concat(File.ReadAllLines(path)
        .Skip(Number(words[1]) - 1).Take(Number(words[2]) - Number(words[1]) + 1).Select(line => line + "\n"));

    private static int Number(string word) => int.Parse(word, CultureInfo.InvariantCulture);

    private static Run Run(params string[] args)
    {
        using var @out = new StringWriter { NewLine = "\n" };
        using var err = new StringWriter { NewLine = "\n" };
        var code = ByrelawApp.Run(args, Doors.Plain(@out, err, Repository.Root) with { KeepsLog = false, Clock = new FixedClock { Now = new(2026, 10, 12, 17, 0, 0, TimeSpan.Zero) } });
        return new Run(code, @out.ToString(), err.ToString());
    }
}
