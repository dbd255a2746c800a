namespace Byrelaw.Loading;

/// <summary>Rule files as they lie on disk.</summary>
/// <param name="work">Says where relative paths start and how they are shown.</param>
public sealed class RuleFilesOnDisk(WorkFolder work) : IRuleFiles
{
    /// <inheritdoc/>
    public string Resolve(string from, string relative) =>
        Path.GetFullPath(relative.Replace('/', Path.DirectorySeparatorChar), Path.GetDirectoryName(work.Full(from))!);

    /// <inheritdoc/>
    public string Show(string path) => work.Show(path);

    /// <inheritdoc/>
    public byte[]? Read(string path) => File.Exists(path) ? File.ReadAllBytes(path) : null;
}
