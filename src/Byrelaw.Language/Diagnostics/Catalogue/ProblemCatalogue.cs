using System.Reflection;

namespace Byrelaw.Language.Diagnostics;

/// <summary>
/// Every problem that Byrelaw finds, with the page that teaches it. The pages are those in <c>docs/problems</c>, carried
/// inside the program so that they can be read anywhere.
/// </summary>
public static class ProblemCatalogue
{
    private const string Folder = "problems/";
    private const string Heading = "## ";

    private static readonly Lazy<ImmutableArray<ProblemPage>> Pages = new(() => [.. Read().OrderBy(page => page.Code, StringComparer.Ordinal)]);

    /// <summary>All pages, by code.</summary>
    public static ImmutableArray<ProblemPage> All => Pages.Value;

    /// <summary>The page of a code, in capitals or not; null where there is no such code.</summary>
    public static ProblemPage? Find(string code) => All.FirstOrDefault(page => page.Code.Equals(code, StringComparison.OrdinalIgnoreCase));

    /// <summary>The code that is nearest to one that does not exist; null where none is near.</summary>
    public static string? Nearest(string code) => NearestName.To(code, All.Select(page => page.Code));

    /// <summary>The sections of one page of the documentation, each headed <c>## CODE: title</c>.</summary>
    internal static IEnumerable<ProblemPage> Sections(string page)
    {
        foreach (var section in page.ReplaceLineEndings("\n").Split("\n" + Heading).Skip(1))
        {
            var lines = section.Split('\n', 2);
            var head = lines[0].Split(": ", 2);
            yield return new ProblemPage(head[0], head[^1], lines[^1].Trim('\n') + "\n");
        }
    }

    private static IEnumerable<ProblemPage> Read()
    {
        var assembly = Assembly.GetExecutingAssembly();
        foreach (var name in assembly.GetManifestResourceNames().Where(name => name.StartsWith(Folder, StringComparison.Ordinal)))
        {
            using var reader = new StreamReader(assembly.GetManifestResourceStream(name)!);
            foreach (var page in Sections(reader.ReadToEnd()))
            {
                yield return page;
            }
        }
    }
}
