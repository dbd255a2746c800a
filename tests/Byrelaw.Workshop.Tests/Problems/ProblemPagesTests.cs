using Byrelaw.Testing.Problems;

namespace Byrelaw.Workshop.Tests.Problems;

/// <summary>The pages about what shows when a rule file is read say what the program says.</summary>
public sealed class ProblemPagesTests
{
    /// <summary>A visit that is still to be chosen: nothing is wrong, and only the agreed day takes it away.</summary>
    private const string Reminder = "B1253";

    public static TheoryData<string> Pages() => [.. ProblemPages.OfReading];

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
            lesson.Mended.Codes.Where(code => code != Reminder || lesson.Code == Reminder).ShouldBeEmpty(lesson.Code + "\n" + lesson.Mended.Text);
        }
    }

    [Theory]
    [InlineData("b0204", "B0204")]
    [InlineData("B0204", "B0204")]
    public void A_page_is_found_by_its_code(string code, string found) => ProblemCatalogue.Find(code)!.Code.ShouldBe(found);

    [Fact]
    public void The_nearest_code_is_offered_for_one_that_does_not_exist() => ProblemCatalogue.Nearest("B02O4").ShouldBe("B0204");

    private static Said Read(ExampleFiles example)
    {
        var files = new RuleFilesInMemory();
        foreach (var (name, bytes) in example.All)
        {
            files.Add(name, bytes);
        }

        var problems = RulebookReader.Read(example.Root, files, today: new(2027, 6, 30))!.Corrected().Problems;
        return new Said(DiagnosticText.Of(problems), [.. problems.Select(problem => problem.Code)]);
    }
}
