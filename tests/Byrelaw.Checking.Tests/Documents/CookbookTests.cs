using Byrelaw.Testing.Documents;

namespace Byrelaw.Checking.Tests.Documents;

/// <summary>The thirty criteria of the cookbook, each with an animal that meets it, one that does not, and one of which nobody knows.</summary>
public sealed class CookbookTests
{
    private static readonly List<Fence> Fences =
        [.. MarkdownPage.Fences(File.ReadAllText(Repository.At("docs/cookbook.md")).ReplaceLineEndings("\n"))];

    [Fact]
    public void Each_criterion_has_three_animals_that_come_out_as_the_page_says()
    {
        var words = Fences.Where(fence => fence is { Language: "byre", Rest: "words" }).Select(fence => fence.Text).ShouldHaveSingleItem();
        var criteria = Fences.Where(fence => fence is { Language: "byre", Rest: "rules" }).ToList();
        criteria.Count.ShouldBe(30);
        var failures = new List<string>();
        foreach (var criterion in criteria)
        {
            var files = new RuleFiles(("words.byre", words), ("page.byre", "use \"words.byre\"\n" + criterion.Text));
            var reading = RulebookReader.Read("page.byre", files)!;
            failures.Add(DiagnosticText.Of(reading.Problems));
            var outcomes = ExampleRunner.Run(reading, files);
            outcomes.Length.ShouldBe(3);
            criterion.Text.Split('\n').Where(line => line.StartsWith("  expect ", StringComparison.Ordinal)).Select(line => line.Split(' ')[^1]).ShouldBe(["true", "false", "known"]);
            failures.Add(Tried.Failures(outcomes));
        }

        string.Concat(failures).ShouldBe("");
    }
}
