namespace Byrelaw.Checking.Tests.Documents;

public sealed class TroublePageTests
{
    [Fact]
    public void The_page_leads_to_each_trouble_that_is_taught()
    {
        var listed = File.ReadAllLines(Repository.At("docs/trouble.md")).Where(line => line.StartsWith("| [B", StringComparison.Ordinal));
        var taught = ProblemCatalogue.All.Where(page => page.Code.StartsWith("B11", StringComparison.Ordinal)).ToList();

        taught.Count.ShouldBe(11);
        listed.ShouldBe(taught.Select(page => $"| [{page.Code}](problems/B11-trouble.md#{Anchor($"{page.Code}: {page.Title}")}) | {page.Title} |"));
    }

    /// <summary>What the heading of a Markdown page is called in links to it.</summary>
    private static string Anchor(string heading) =>
        string.Concat(heading.ToLowerInvariant().Where(letter => char.IsLetterOrDigit(letter) || letter is ' ' or '-')).Replace(' ', '-');
}
