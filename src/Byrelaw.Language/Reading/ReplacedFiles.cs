namespace Byrelaw.Language.Reading;

/// <summary>Rule files as they would be with other texts in some of them: an edit that is tried, a text that came in another way.</summary>
/// <param name="files">As they are.</param>
/// <param name="replaced">What a path holds instead; null where it is as it is.</param>
/// <param name="shown">What a path is shown as instead; null where it is shown as it is.</param>
public sealed class ReplacedFiles(IRuleFiles files, Func<string, byte[]?> replaced, Func<string, string?>? shown = null) : IRuleFiles
{
    /// <summary>Files with another text in one of them.</summary>
    /// <param name="files">As they are.</param>
    /// <param name="path">The one that differs.</param>
    /// <param name="text">What it would hold.</param>
    public static ReplacedFiles With(IRuleFiles files, string path, string text)
    {
        var bytes = Encoding.UTF8.GetBytes(text);
        return new(files, other => other == path ? bytes : null);
    }

    /// <summary>The same by the path as it is shown in messages.</summary>
    public static ReplacedFiles WithShown(IRuleFiles files, string shown, string text)
    {
        var bytes = Encoding.UTF8.GetBytes(text);
        return new(files, other => files.Show(other) == shown ? bytes : null);
    }

    /// <inheritdoc/>
    public string Resolve(string from, string relative) => files.Resolve(from, relative);

    /// <inheritdoc/>
    public string Show(string path) => shown?.Invoke(path) ?? files.Show(path);

    /// <inheritdoc/>
    public byte[]? Read(string path) => replaced(path) ?? files.Read(path);
}
