using System.Text.RegularExpressions;

namespace Byrelaw.Workshop.Tests.Documents;

/// <summary>Whoever follows a link of the pages comes to a file and a heading that are there.</summary>
public sealed partial class LinksTests
{
    private static readonly List<string> Pages =
    [
        Repository.At("README.md"), Repository.At("DEVELOPERS.md"),
        .. new[] { "docs", "examples", "rulesets", "editor-support" }.SelectMany(folder => Directory.EnumerateFiles(Repository.At(folder), "*.md", SearchOption.AllDirectories))
            .Where(page => !page.Contains("node_modules", StringComparison.Ordinal)).Order(StringComparer.Ordinal),
    ];

    [Fact]
    public void Every_link_leads_somewhere()
    {
        var (lost, count) = (new List<string>(), 0);
        foreach (var page in Pages)
        {
            foreach (Match link in Link().Matches(Fences().Replace(File.ReadAllText(page), "")))
            {
                count++;
                var (path, place) = (link.Groups["path"].Value, link.Groups["place"].Value);
                var target = path.Length == 0 ? page : Path.GetFullPath(Path.Combine(Path.GetDirectoryName(page)!, path));
                if (!(File.Exists(target) || Directory.Exists(target)) || (place.Length > 0 && !Headings(target).Contains(place)))
                {
                    lost.Add($"{Path.GetRelativePath(Repository.Root, page)}: {link.Value}");
                }
            }
        }

        lost.ShouldBeEmpty();
        count.ShouldBeGreaterThan(150);
    }

    /// <summary>A line of a table below an empty line, with no head of its own, is no table.</summary>
    [Fact]
    public void No_table_is_cut_in_two()
    {
        var cut = new List<string>();
        foreach (var page in Pages)
        {
            var lines = Fences().Replace(File.ReadAllText(page), "").Split('\n');
            cut.AddRange(Enumerable.Range(1, lines.Length - 2).Where(i => lines[i].StartsWith('|') && lines[i - 1].Length == 0 && !lines[i + 1].StartsWith("| ---", StringComparison.Ordinal))
                .Select(i => $"{Path.GetRelativePath(Repository.Root, page)}: {lines[i]}"));
        }

        cut.ShouldBeEmpty();
    }

    /// <summary>The places that headings make, as the pages of a code host write them: small letters, blanks as hyphens, other signs left out.</summary>
    private static HashSet<string> Headings(string page) =>
        [.. Heading().Matches(Fences().Replace(File.ReadAllText(page), "")).Select(heading => Signs().Replace(heading.Groups[1].Value.Trim().ToLowerInvariant(), "").Replace(' ', '-'))];

    [GeneratedRegex(@"\]\((?!https?:)(?<path>[^)#\s]*)(?:#(?<place>[^)\s]+))?\)")]
    private static partial Regex Link();

    [GeneratedRegex(@"^#{1,6} (.*)$", RegexOptions.Multiline)]
    private static partial Regex Heading();

    [GeneratedRegex(@"[^\p{L}\p{N}\- _]")]
    private static partial Regex Signs();

    [GeneratedRegex(@"^```.*?^```", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Fences();
}
