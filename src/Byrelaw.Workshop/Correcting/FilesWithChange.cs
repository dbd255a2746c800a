namespace Byrelaw.Workshop.Correcting;

/// <summary>The same files, one of them with another text.</summary>
/// <param name="files">The files.</param>
/// <param name="shown">The changed file's path, as shown in messages.</param>
/// <param name="text">Its new text.</param>
internal sealed class FilesWithChange(IRuleFiles files, string shown, string text) : IRuleFiles
{
    public string Resolve(string from, string relative) => files.Resolve(from, relative);

    public string Show(string path) => files.Show(path);

    public byte[]? Read(string path) => files.Show(path) == shown ? Encoding.UTF8.GetBytes(text) : files.Read(path);
}
