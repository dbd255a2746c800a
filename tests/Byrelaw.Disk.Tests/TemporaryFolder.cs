namespace Byrelaw.Disk.Tests;

/// <summary>A folder that is gone after the test.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("byrelaw-disk-").FullName;

    public void Dispose() => Directory.Delete(Path, recursive: true);

    public string At(string path) => System.IO.Path.Combine(Path, path);

    public void Write(string path, string text)
    {
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(At(path))!);
        File.WriteAllText(At(path), text);
    }

    public string Read(string path) => File.ReadAllText(At(path));

    /// <summary>Everything in it, files and folders, with forward slashes, sorted.</summary>
    public string[] All() =>
    [
        .. Directory.EnumerateFileSystemEntries(Path, "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.ReparsePoint })
            .Select(path => System.IO.Path.GetRelativePath(Path, path).Replace('\\', '/')).Order(StringComparer.Ordinal),
    ];
}
