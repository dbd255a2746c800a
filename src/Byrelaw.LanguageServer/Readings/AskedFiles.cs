namespace Byrelaw.LanguageServer.Readings;

/// <summary>Passes files on, and remembers which were asked for: a change in any of them, or a missing one that appears,
/// makes what was read of them out of date.</summary>
internal sealed class AskedFiles(IRuleFiles files) : IRuleFiles
{
    /// <summary>Every path that was asked for, whether or not there was a file.</summary>
    public HashSet<string> Paths { get; } = new(StringComparer.Ordinal);

    /// <summary>The path behind each name that messages use.</summary>
    public Dictionary<string, string> ByShown { get; } = new(StringComparer.Ordinal);

    /// <inheritdoc/>
    public string Resolve(string from, string relative) => files.Resolve(from, relative);

    /// <inheritdoc/>
    public string Show(string path)
    {
        var shown = files.Show(path);
        ByShown[shown] = path;
        return shown;
    }

    /// <inheritdoc/>
    public byte[]? Read(string path)
    {
        Paths.Add(path);
        return files.Read(path);
    }
}
