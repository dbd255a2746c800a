using Byrelaw.Testing.Documents;

namespace Byrelaw.Testing.Problems;

/// <summary>The sections of a page about problems, each with its examples.</summary>
internal sealed class ProblemSections
{
    private readonly string[] _lines;
    private readonly string _page;

    public ProblemSections(string path)
    {
        _page = File.ReadAllText(Repository.At(path)).ReplaceLineEndings("\n");
        _lines = _page.Split('\n');
    }

    /// <summary>Each code with its fenced blocks, in order.</summary>
    public IEnumerable<(string Code, List<Fence> Fences)> All =>
        MarkdownPage.Fences(_page).GroupBy(fence => CodeAt(fence.Line)).Select(section => (section.Key, section.ToList()));

    /// <summary>The code of the section in which a line (from 1) of the page stands.</summary>
    public string CodeAt(int line) => _lines.Take(line).Last(text => text.StartsWith("## ", StringComparison.Ordinal))[3..].Split(':')[0];
}
