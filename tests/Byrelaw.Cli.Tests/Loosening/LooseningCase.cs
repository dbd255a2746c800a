namespace Byrelaw.Cli.Tests.Loosening;

/// <summary>One case of the page: what was tried.</summary>
/// <param name="Title">Its number and its name.</param>
/// <param name="Open">Why it cannot be helped that somebody is let through; null where nobody may be.</param>
/// <param name="Changes">What it changes of the standard farm's files: a verb, a file and a text.</param>
internal sealed record LooseningCase(string Title, string? Open, IReadOnlyList<Fence> Changes)
{
    private const string Heading = "### ";
    private const string IsOpen = "Open: ";

    /// <summary>The programme that is judged.</summary>
    public string Programme => Changes.Any(change => change.Rest.StartsWith("own", StringComparison.Ordinal)) ? "own.byre" : "farm.byre";

    /// <summary>The standard farm's files, and the cases in the page's order.</summary>
    public static (IReadOnlyList<Fence> Standard, IReadOnlyList<LooseningCase> Cases) Read(string page)
    {
        var lines = page.Split('\n');
        var starts = Enumerable.Range(0, lines.Length).Where(line => lines[line].StartsWith(Heading, StringComparison.Ordinal)).ToList();
        var fences = MarkdownPage.Fences(page).ToList();
        return ([.. fences.Where(fence => fence.Line <= starts[0])], [.. starts.Select((start, i) => At(start, i + 1 < starts.Count ? starts[i + 1] : lines.Length))]);

        LooseningCase At(int start, int end) => new(
            lines[start][Heading.Length..],
            lines[start..end].FirstOrDefault(line => line.StartsWith(IsOpen, StringComparison.Ordinal))?[IsOpen.Length..],
            [.. fences.Where(fence => fence.Line > start && fence.Line <= end)]);
    }

    /// <summary>The files as this case leaves them.</summary>
    public Dictionary<string, string> Files(IEnumerable<Fence> standard)
    {
        var files = standard.ToDictionary(fence => fence.Rest, fence => fence.Text);
        foreach (var change in Changes)
        {
            files[change.Rest] = change.Language switch
            {
                "add" => files[change.Rest] + change.Text,
                "replace" => Replaced(files[change.Rest], change.Text),
                "records" => Replaced(files[change.Rest], "  up to 2026-10-04 =>   up to 2026-10-04\n", change.Text),
                _ => change.Text,
            };
        }

        return files;
    }

    private static string Replaced(string text, string changes, string more = "")
    {
        foreach (var line in changes.Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            var arrow = line.IndexOf("=>", StringComparison.Ordinal);
            var (from, to) = (line[..(arrow - 1)], line[(arrow + 2)..]);
            text.ShouldContain(from);
            text = text.Replace(from, (to.Length > 0 ? to[1..] : "").Replace("\\n", "\n", StringComparison.Ordinal).Replace("\\u202E", "\u202E", StringComparison.Ordinal) + (more.Length > 0 ? "\n" + more.TrimEnd('\n') : ""), StringComparison.Ordinal);
        }

        return text;
    }
}
