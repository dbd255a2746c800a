namespace Byrelaw.Workshop.Tidying;

/// <summary>Rule files as they would be with another text in one of them.</summary>
/// <param name="files">As they are.</param>
/// <param name="own">The one that differs.</param>
/// <param name="text">What it would hold.</param>
internal sealed class OneTextReplaced(IRuleFiles files, string own, string text) : IRuleFiles
{
    public string Resolve(string from, string relative) => files.Resolve(from, relative);

    public string Show(string path) => files.Show(path);

    public byte[]? Read(string path) => path == own ? Encoding.UTF8.GetBytes(text) : files.Read(path);
}
