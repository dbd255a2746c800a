namespace Byrelaw.Language.Tests.Support;

/// <summary>The checkout's own files, shown by their path below its root.</summary>
internal sealed class DiskFiles : IRuleFiles
{
    public string Resolve(string from, string relative) => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(from)!, relative));

    public string Show(string path) => Path.GetRelativePath(Repository.Root, path).Replace('\\', '/');

    public byte[]? Read(string path) => File.Exists(path) ? File.ReadAllBytes(path) : null;
}
