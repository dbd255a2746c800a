using Byrelaw.Testing.Documents;

namespace Byrelaw.Judging.Tests.UnsafeReadings;

/// <summary>One case of the page: what it changes of the standard farm, and what must come out.</summary>
/// <param name="Number">Such as <c>1.20</c>.</param>
/// <param name="Title">In a farmer's words.</param>
/// <param name="Blocks">By their first line, such as <c>events</c> or <c>events cut</c>.</param>
/// <param name="Answers">Questions, each with its answer.</param>
internal sealed record UnsafeCase(string Number, string Title, IReadOnlyDictionary<string, string> Blocks, ImmutableArray<(string Question, string Answer)> Answers)
{
    private const string To = " -> ";

    /// <summary>Whether the page says that she rightly comes through.</summary>
    public bool MayComeThrough => Title.Contains("may come through", StringComparison.Ordinal);

    /// <summary>The blocks of the standard farm, and the cases in the page's order.</summary>
    public static (Dictionary<string, string> Standard, List<UnsafeCase> Cases) Read(string page)
    {
        var standard = new Dictionary<string, string>();
        var cases = new List<UnsafeCase>();
        var titles = page.Split('\n').Where(line => line.StartsWith("### ", StringComparison.Ordinal)).Select(line => line[4..].Split(' ', 2)).ToList();
        var blocks = new Dictionary<string, string>();
        foreach (var fence in MarkdownPage.Fences(page))
        {
            if (fence.Rest == "standard")
            {
                standard[fence.Language] = fence.Text;
            }
            else if (fence.Language != "answers")
            {
                blocks[$"{fence.Language} {fence.Rest}".TrimEnd()] = fence.Text;
            }
            else
            {
                var title = titles[cases.Count];
                var answers = fence.Text.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line.Split(To)).Select(parts => (parts[0], parts[1]));
                cases.Add(new UnsafeCase(title[0], title[1], blocks, [.. answers]));
                blocks = [];
            }
        }

        return (standard, cases);
    }
}
