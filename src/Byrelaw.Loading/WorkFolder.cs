namespace Byrelaw.Loading;

/// <summary>The folder in which someone works: the paths that they write start there, and so do those that they are shown.</summary>
/// <param name="Here">Its full path.</param>
public sealed record WorkFolder(string Here)
{
    /// <summary>A path as the system wants it.</summary>
    /// <exception cref="CannotDoException">No file can have such a name.</exception>
    public string Full(string path) => path.Contains('\0', StringComparison.Ordinal)
        ? throw new CannotDoException("no file's name holds the character NUL")
        : Path.GetFullPath(path, Here);

    /// <summary>A path as people are shown it: relative to where they work, forward slashes, without signs that a terminal would act on.</summary>
    public string Show(string path)
    {
        var relative = Path.GetRelativePath(Here, path).Replace(Path.DirectorySeparatorChar, '/');
        return PlainText.Clean(relative.StartsWith("../../../", StringComparison.Ordinal) ? path.Replace(Path.DirectorySeparatorChar, '/') : relative);
    }
}
