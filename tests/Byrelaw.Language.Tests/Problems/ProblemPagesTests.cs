using Byrelaw.Language.Diagnostics;
using Byrelaw.Testing;
using Byrelaw.Testing.Documents;

namespace Byrelaw.Language.Tests.Problems;

/// <summary>The pages in <c>docs/problems</c> teach every code, and say what the program says.</summary>
public sealed class ProblemPagesTests
{
    public static TheoryData<string> Pages() =>
        [.. Directory.EnumerateFiles(Repository.At("docs/problems"), "B*.md").Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];

    [Fact]
    public void Each_code_has_one_page()
    {
        var codes = ProblemCodes.In(typeof(ProblemCatalogue).Assembly).Keys.Where(code => code[0] == 'B').Where(code => !IsOwed(code)).ToList();

        codes.Count.ShouldBeGreaterThan(100);
        ProblemCatalogue.All.Select(page => page.Code).ShouldBeUnique();
        codes.Except(ProblemCatalogue.All.Select(page => page.Code)).Order().ShouldBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Each_page_says_what_the_program_says(string page)
    {
        var examples = new ProblemExamples();
        var sections = new Sections(page);
        ExecutedPage.Verify("docs/problems/" + page, fence =>
        {
            if (fence.Language == "problems")
            {
                return DiagnosticText.Of(examples.Read().Problems).TrimEnd('\n') + "\n";
            }

            examples.Add(fence, sections.CodeAt(fence.Line));
            return null;
        });
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Each_wrong_example_has_just_its_problem_and_each_mended_one_has_none(string page)
    {
        foreach (var (code, fences) in new Sections(page).All)
        {
            var examples = new ProblemExamples();
            var says = fences.FindIndex(fence => fence.Language == "problems");
            says.ShouldBeInRange(1, fences.Count - 2, code);
            fences.Take(says).ToList().ForEach(fence => examples.Add(fence, code));
            examples.Read().Problems.Select(problem => problem.Code).Distinct().ShouldBe([code]);

            fences.Skip(says + 1).ToList().ForEach(fence => examples.Add(fence, code));
            DiagnosticText.Of(examples.Read().Problems).ShouldBe("", code);
        }
    }

    [Theory]
    [InlineData("b0204", "B0204")]
    [InlineData("B0204", "B0204")]
    public void A_page_is_found_by_its_code(string code, string found) => ProblemCatalogue.Find(code)!.Code.ShouldBe(found);

    [Fact]
    public void The_nearest_code_is_offered_for_one_that_does_not_exist() => ProblemCatalogue.Nearest("B02O4").ShouldBe("B0204");

    /// <summary>Codes whose pages whoever made them still has to write.</summary>
    private static bool IsOwed(string code) => code.StartsWith("B1", StringComparison.Ordinal);
}
