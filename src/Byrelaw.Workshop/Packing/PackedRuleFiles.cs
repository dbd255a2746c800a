namespace Byrelaw.Workshop.Packing;

/// <summary>The rule files of a pack, to be read without unpacking them.</summary>
/// <param name="pack">Where they are.</param>
public sealed class PackedRuleFiles(Pack pack) : IRuleFiles
{
    private readonly Dictionary<string, PackedFile> _files = pack.Files.ToDictionary(file => file.Path, StringComparer.Ordinal);

    /// <inheritdoc/>
    public string Resolve(string from, string relative) => PackPath.Resolve(from, relative) ?? "../" + relative;

    /// <inheritdoc/>
    public string Show(string path) => path;

    /// <inheritdoc/>
    public byte[]? Read(string path) => _files.TryGetValue(path, out var file) ? [.. file.Bytes] : null;
}
