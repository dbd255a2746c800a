namespace Byrelaw.LanguageServer.Readings;

/// <summary>Files as they would be after some edits.</summary>
/// <param name="files">As they are.</param>
/// <param name="edited">New texts by path.</param>
internal sealed class EditedFiles(IRuleFiles files, IReadOnlyDictionary<string, string> edited) : IRuleFiles
{
    /// <inheritdoc/>
    public string Resolve(string from, string relative) => files.Resolve(from, relative);

    /// <inheritdoc/>
    public string Show(string path) => files.Show(path);

    /// <inheritdoc/>
    public byte[]? Read(string path) => edited.TryGetValue(path, out var text) ? Encoding.UTF8.GetBytes(text) : files.Read(path);
}
