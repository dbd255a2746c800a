namespace Byrelaw.Workshop.Packing;

/// <summary>Passes files on, and keeps what was read.</summary>
/// <param name="files">Where they come from.</param>
public sealed class RuleFilesKept(IRuleFiles files) : IRuleFiles
{
    private readonly Dictionary<string, ImmutableArray<byte>> _kept = new(StringComparer.Ordinal);

    /// <summary>What was read, by the path it was read from.</summary>
    public IReadOnlyDictionary<string, ImmutableArray<byte>> Kept => _kept;

    /// <inheritdoc/>
    public string Resolve(string from, string relative) => files.Resolve(from, relative);

    /// <inheritdoc/>
    public string Show(string path) => files.Show(path);

    /// <inheritdoc/>
    public byte[]? Read(string path)
    {
        var bytes = files.Read(path);
        if (bytes is not null)
        {
            _kept[path] = [.. bytes];
        }

        return bytes;
    }
}
