namespace Byrelaw.Cli.Loading;

/// <summary>Rule files as they lie on disk.</summary>
/// <param name="doors">Says where relative paths start and how they are shown.</param>
public sealed class RuleFilesOnDisk(Doors doors) : IRuleFiles
{
    /// <inheritdoc/>
    public string Resolve(string from, string relative) =>
        Path.GetFullPath(relative.Replace('/', Path.DirectorySeparatorChar), Path.GetDirectoryName(doors.Full(from))!);

    /// <inheritdoc/>
    public string Show(string path) => doors.Show(path);

    /// <inheritdoc/>
    public byte[]? Read(string path) => File.Exists(path) ? File.ReadAllBytes(path) : null;
}
