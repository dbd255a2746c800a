namespace Byrelaw.Workshop.Tests.Tidying;

/// <summary>The project's own rule files.</summary>
internal static class Corpus
{
    /// <summary>Their paths below the checkout's root.</summary>
    public static readonly string[] Paths =
    [
        .. new[] { "rulesets", "examples" }
            .SelectMany(folder => Directory.EnumerateFiles(Repository.At(folder), "*.byre", SearchOption.AllDirectories))
            .Select(path => Path.GetRelativePath(Repository.Root, path).Replace('\\', '/'))
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>Their texts.</summary>
    public static readonly Dictionary<string, string> Good = Paths.ToDictionary(path => path, path => File.ReadAllText(Repository.At(path)));

    /// <summary>All of them, one with another text.</summary>
    public static RuleFilesInMemory Files(string path, string text)
    {
        var files = new RuleFilesInMemory();
        foreach (var (good, own) in Good)
        {
            files.Add(good, good == path ? text : own);
        }

        return files;
    }
}
