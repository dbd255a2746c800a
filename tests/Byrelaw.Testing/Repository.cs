namespace Byrelaw.Testing;

/// <summary>Where the checkout lies, found from the running test, so that no path is baked in.</summary>
public static class Repository
{
    /// <summary>The folder that holds the solution.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>A path below the root, given with forward slashes.</summary>
    public static string At(string relative) => Path.Combine(Root, relative.Replace('/', Path.DirectorySeparatorChar));

    /// <summary>
    /// Turns a path that the compiler recorded into one on this disk: deterministic builds
    /// record <c>/_/tests/...</c> instead of the real folder.
    /// </summary>
    public static string Resolve(string compiledPath) =>
        compiledPath.StartsWith("/_/", StringComparison.Ordinal) ? At(compiledPath[3..]) : compiledPath;

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Byrelaw.slnx")))
            {
                return folder.FullName;
            }
        }

        throw new InvalidOperationException("The tests run outside a checkout: no Byrelaw.slnx above " + AppContext.BaseDirectory);
    }
}
