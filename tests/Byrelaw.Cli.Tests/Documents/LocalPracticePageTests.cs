namespace Byrelaw.Cli.Tests.Documents;

/// <summary>What the page on local practice shows is what the files of the example say and what the program prints.</summary>
public sealed class LocalPracticePageTests
{
    [Fact]
    public void What_the_page_shows_is_what_the_program_prints()
    {
        var shown = 0;
        ExecutedPage.Verify("docs/local-practice.md", fence =>
        {
            shown++;
            var words = fence.Rest.Split(' ');
            return fence.Language switch
            {
                "byre" => Lines(words[0], Number(words[1]), Number(words[2])),
                "problems" => Run(words).Err.TrimEnd('\n') + "\n",
                _ => Run(words).Out.TrimEnd('\n') + "\n",
            };
        });

        shown.ShouldBe(10);
    }

    private static string Lines(string path, int first, int last) =>
        string.Concat(File.ReadAllLines(Repository.At(path)).Skip(first - 1).Take(last - first + 1).Select(line => line + "\n"));

    private static int Number(string word) => int.Parse(word, CultureInfo.InvariantCulture);

    private static Run Run(params string[] args)
    {
        using var @out = new StringWriter { NewLine = "\n" };
        using var err = new StringWriter { NewLine = "\n" };
        var code = ByrelawApp.Run(args, Doors.Plain(@out, err, Repository.Root) with { KeepsLog = false, Clock = new FixedClock { Now = new(2027, 10, 12, 17, 0, 0, TimeSpan.Zero) } });
        return new Run(code, @out.ToString(), err.ToString());
    }
}
