using Byrelaw.Testing.Documents;

namespace Byrelaw.Language.Tests.Documents;

public sealed class LanguagePageTests
{
    [Theory]
    [InlineData("docs/language.md", 25)]
    public void Every_example_of_a_page_reads_as_the_page_says(string page, int atLeast)
    {
        var examples = new PageExamples();

        ExecutedPage.Verify(page, examples.Outcome);

        examples.Unstated.ShouldBeEmpty();
        examples.Count.ShouldBeGreaterThanOrEqualTo(atLeast);
    }
}
