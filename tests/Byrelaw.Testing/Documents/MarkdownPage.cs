using System.Text;

namespace Byrelaw.Testing.Documents;

/// <summary>A page of the documentation, whose fenced blocks are run. What a page states as the outcome of
/// a block is worked out anew, and the page must already say the same.</summary>
public static class MarkdownPage
{
    private const string Mark = "```";

    /// <summary>All fenced blocks that start in the first column, in order.</summary>
    public static IEnumerable<Fence> Fences(string page)
    {
        var fences = new List<Fence>();
        Rewrite(page, fence =>
        {
            fences.Add(fence);
            return null;
        });
        return fences;
    }

    /// <summary>The page with the text of some blocks replaced.</summary>
    /// <param name="page">The whole page.</param>
    /// <param name="replace">Called for each block in order; null leaves it as it is.</param>
    public static string Rewrite(string page, Func<Fence, string?> replace)
    {
        ArgumentNullException.ThrowIfNull(page);
        ArgumentNullException.ThrowIfNull(replace);
        var lines = page.ReplaceLineEndings("\n").Split('\n');
        var rewritten = new StringBuilder();
        for (var i = 0; i < lines.Length; i++)
        {
            Append(rewritten, lines, i);
            if (!lines[i].StartsWith(Mark, StringComparison.Ordinal))
            {
                continue;
            }

            var opened = i;
            var text = new StringBuilder();
            for (i++; i < lines.Length && lines[i] != Mark; i++)
            {
                text.Append(lines[i]).Append('\n');
            }

            if (i == lines.Length)
            {
                throw new FormatException($"The block that opens on line {opened + 1} is never closed.");
            }

            var info = lines[opened][Mark.Length..].Split(' ', 2);
            var fence = new Fence(info[0], info.Length > 1 ? info[1] : "", text.ToString(), opened + 1);
            rewritten.Append(replace(fence) ?? fence.Text);
            Append(rewritten, lines, i);
        }

        return rewritten.ToString();
    }

    private static void Append(StringBuilder page, string[] lines, int line) =>
        page.Append(lines[line]).Append(line == lines.Length - 1 ? "" : "\n");
}
