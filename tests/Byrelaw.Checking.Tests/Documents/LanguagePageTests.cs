using Byrelaw.Testing.Documents;

namespace Byrelaw.Checking.Tests.Documents;

public sealed class LanguagePageTests
{
    [Fact]
    public void The_examples_on_the_language_page_come_out_as_expected()
    {
        var fences = MarkdownPage.Fences(File.ReadAllText(Repository.At("docs/language.md")).ReplaceLineEndings("\n")).ToList();
        var words = fences.Where(fence => fence is { Language: "byre", Rest: "words" }).Select(fence => fence.Text).ShouldHaveSingleItem();
        var tried = 0;
        foreach (var fence in fences.Where(fence => fence is { Language: "byre", Rest: "rules" } && fence.Text.Contains("\nexample ", StringComparison.Ordinal)))
        {
            var files = new RuleFiles(("words.byre", words), ("page.byre", "use \"words.byre\"\n" + fence.Text));
            var reading = RulebookReader.Read("page.byre", files)!;
            var outcomes = ExampleRunner.Run(reading, files);
            Tried.Failures(outcomes).ShouldBe("");
            tried += outcomes.Length;
        }

        tried.ShouldBe(4);
    }
}
