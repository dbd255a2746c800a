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
    /// <exception cref="IOException">It is a pipe or a device, or cannot be read.</exception>
    public byte[]? Read(string path)
    {
        // What a run that was cut off left half unpacked is finished first: half of it would be no rulebook that anybody wrote.
        FilesTogether.FinishAround(path);
        return RegularFile.Read(path);
    }
}
