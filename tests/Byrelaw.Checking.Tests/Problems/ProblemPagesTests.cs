using Byrelaw.Testing.Problems;
using Byrelaw.Workshop.Correcting;

namespace Byrelaw.Checking.Tests.Problems;

/// <summary>The pages about what shows when rules are tried on made-up animals say what the program says.</summary>
public sealed class ProblemPagesTests
{
    public static TheoryData<string> Pages() => [.. ProblemPages.OfTrying];

    [Theory]
    [MemberData(nameof(Pages))]
    public void Each_page_says_what_the_program_says(string page) => new TaughtPage(page, Try).SaysWhatTheProgramSays();

    [Theory]
    [MemberData(nameof(Pages))]
    public void Each_wrong_example_has_just_its_problem_and_each_mended_one_has_none(string page)
    {
        foreach (var lesson in new TaughtPage(page, Try).Lessons())
        {
            lesson.Wrong.Codes.Distinct().ShouldBe([lesson.Code]);
            lesson.Mended.Text.ShouldBe("", lesson.Code);
        }
    }

    /// <summary>All that <c>byrelaw check</c> finds: in reading, in the rules alone, and in trying the worked examples.</summary>
    private static Said Try(ExampleFiles example)
    {
        var files = new RuleFiles([.. example.All.Select(file => (file.Key, Encoding.UTF8.GetString(file.Value)))]);
        var reading = RulebookReader.Read(example.Root, files)!.Corrected();
        var outcomes = ExampleRunner.Run(reading, files);
        List<Diagnostic> problems = [.. reading.Problems, .. TroubleFinder.Find(reading.Rulebook), .. Tried.Problems(outcomes)];
        return new Said(DiagnosticText.Of(problems), [.. problems.Select(problem => problem.Code)]);
    }
}
