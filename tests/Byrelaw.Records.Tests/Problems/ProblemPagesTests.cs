namespace Byrelaw.Records.Tests.Problems;

/// <summary>The pages about what shows when records are read say what the program says.</summary>
public sealed class ProblemPagesTests
{
    public static TheoryData<string> Pages() => [.. ProblemPages.OfRecords];

    [Theory]
    [MemberData(nameof(Pages))]
    public void Each_page_says_what_the_program_says(string page) => new TaughtPage(page, Read).SaysWhatTheProgramSays();

    [Theory]
    [MemberData(nameof(Pages))]
    public void Each_wrong_example_has_just_its_problem_and_each_mended_one_has_none(string page)
    {
        foreach (var lesson in new TaughtPage(page, Read).Lessons())
        {
            lesson.Wrong.Codes.Distinct().ShouldBe([lesson.Code]);
            lesson.Mended.Text.ShouldBe("", lesson.Code);
        }
    }

    private static Said Read(ExampleFiles example)
    {
        Diagnostic[] problems = [.. new RecordsOfAnExample(example).Problems()];
        return new Said(DiagnosticText.Of(problems), [.. problems.Select(problem => problem.Code)]);
    }
}
