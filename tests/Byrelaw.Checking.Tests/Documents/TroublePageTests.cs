using System.Text;
using Byrelaw.Checking.Trouble;
using Byrelaw.Language.Diagnostics;
using Byrelaw.Language.Reading;
using Byrelaw.Testing;
using Byrelaw.Testing.Documents;

namespace Byrelaw.Checking.Tests.Documents;

public sealed class TroublePageTests
{
    private const string Page = "docs/trouble.md";

    [Fact]
    public void Every_example_has_the_trouble_that_the_page_says()
    {
        var files = new Files();
        var found = "";
        ExecutedPage.Verify(Page, fence =>
        {
            if (fence.Language == "problems")
            {
                return found.TrimEnd('\n') + "\n";
            }

            if (fence is { Language: "byre", Rest: "words" })
            {
                files.Words = fence.Text;
            }
            else if (fence is { Language: "byre", Rest: "rules" })
            {
                files.Rules = fence.Text + "use \"words.byre\"\n";
                var reading = RulebookReader.Read("example.byre", files)!;
                reading.Problems.Select(DiagnosticText.Of).ShouldBeEmpty();
                found = DiagnosticText.Of(TroubleFinder.Find(reading.Rulebook));
                found.ShouldNotBeEmpty();
            }

            return null;
        });
    }

    [Fact]
    public void Every_code_has_its_part_of_the_page_and_an_example_there()
    {
        var parts = File.ReadAllText(Repository.At(Page)).Split("\n## ").Skip(1).ToDictionary(part => part[..5]);
        parts.Keys.ShouldBe(Enumerable.Range(1101, 10).Select(code => $"B{code}"), ignoreOrder: true);
        foreach (var (code, part) in parts)
        {
            part.ShouldContain($" warning {code}: ");
        }
    }

    private sealed class Files : IRuleFiles
    {
        public string Words { get; set; } = "";

        public string Rules { get; set; } = "";

        public string Resolve(string from, string relative) => relative;

        public string Show(string path) => path;

        public byte[]? Read(string path) => Encoding.UTF8.GetBytes(path == "words.byre" ? Words : Rules);
    }
}
