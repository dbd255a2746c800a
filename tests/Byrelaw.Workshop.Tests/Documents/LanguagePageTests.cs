using Byrelaw.Language.Units;

namespace Byrelaw.Workshop.Tests.Documents;

public sealed class LanguagePageTests
{
    [Theory]
    [InlineData("docs/language.md", 25)]
    [InlineData("docs/for-rule-writers.md", 5)]
    [InlineData("docs/cookbook.md", 31)]
    public void Every_example_of_a_page_reads_as_the_page_says(string page, int atLeast)
    {
        var examples = new PageExamples();

        ExecutedPage.Verify(page, examples.Outcome);

        examples.Unstated.ShouldBeEmpty();
        examples.Count.ShouldBeGreaterThanOrEqualTo(atLeast);
    }

    [Fact]
    public void The_page_names_every_unit_that_can_be_written()
    {
        var words = File.ReadAllText(Repository.At("docs/language.md")).Split(' ', '\n', '`', ',', '.').ToHashSet(StringComparer.Ordinal);

        UnitTable.All.Select(unit => unit.Symbol).Where(symbol => !words.Contains(symbol)).ShouldBeEmpty();
    }
}
