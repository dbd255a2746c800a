using Byrelaw.Testing.Documents;
using Byrelaw.Testing.Problems;

namespace Byrelaw.Reporting.Tests.Log;

/// <summary>
/// The page about the log's problems says what the program says. <c>problems change 2</c> shows what is said of a log of four
/// lines after that was done to it.
/// </summary>
public sealed class LogPageTests
{
    private const string Page = "docs/problems/L01-log.md";

    [Fact]
    public void Each_code_has_its_section() =>
        ProblemCodes.In(typeof(LogCheck).Assembly).Keys.Where(code => code[0] == 'L').Order()
            .ShouldBe(ProblemCatalogue.All.Select(page => page.Code).Where(code => code[0] == 'L'));

    [Fact]
    public void The_page_says_what_the_program_says()
    {
        var section = "";
        var sections = File.ReadAllText(Repository.At(Page)).Split('\n');
        ExecutedPage.Verify(Page, fence =>
        {
            section = sections.Take(fence.Line).Last(line => line.StartsWith("## ", StringComparison.Ordinal))[3..8];
            var problems = Damaged(fence.Rest.Split(' '));
            problems.Select(problem => problem.Code).ShouldBe([section]);
            return DiagnosticText.Of(problems).TrimEnd('\n') + "\n";
        });
        section.ShouldBe("L0106");
    }

    private static IEnumerable<Diagnostic> Damaged(string[] words)
    {
        using var log = new SomeLog(4);
        var kept = LogCheck.Of(log.Bytes, "log").LastHash!;
        var lines = log.Lines;
        var at = int.Parse(words[1], CultureInfo.InvariantCulture) - 1;
        switch (words[0])
        {
            case "change":
                lines[at] = lines[at].Replace("\"ready\":1", "\"ready\":7", StringComparison.Ordinal);
                break;
            case "remove":
                lines.RemoveAt(at);
                break;
            case "swap":
                (lines[at], lines[at + 1]) = (lines[at + 1], lines[at]);
                break;
            case "halve":
                lines[at] = lines[at][..70];
                break;
            case "add":
                lines.Insert(at, "Tuesday: the vet came and looked through this");
                break;
            case "cut":
                return LogCheck.Of(SomeLog.Join(lines.Take(at)), JudgingLog.FileName, kept).Problems;
        }

        return LogCheck.Of(SomeLog.Join(lines).AsSpan()[..^(words[0] == "halve" ? 1 : 0)], JudgingLog.FileName).Problems;
    }
}
