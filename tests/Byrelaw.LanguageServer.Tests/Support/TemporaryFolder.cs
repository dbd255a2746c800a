namespace Byrelaw.LanguageServer.Tests.Support;

/// <summary>A folder that is gone after the test.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    /// <summary>Where it is.</summary>
    public string Path { get; } = Directory.CreateTempSubdirectory("byrelaw-").FullName;

    /// <summary>Writes a file; returns its path.</summary>
    public string Write(string name, string text)
    {
        var path = At(name);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return path;
    }

    /// <summary>The path of a file in it.</summary>
    public string At(string name) => System.IO.Path.Combine(Path, name);

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(Path, recursive: true);
}
