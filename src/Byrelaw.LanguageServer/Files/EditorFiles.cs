namespace Byrelaw.LanguageServer.Files;

/// <summary>Rule files as an editor sees them: open documents first, then the disk.</summary>
internal sealed class EditorFiles : IRuleFiles
{
    // One byte more than the reader takes: what is longer is told to be too long, and need not be read to its end.
    private const int MostBytes = 2_000_001;

    /// <summary>The open documents by path.</summary>
    public Dictionary<string, OpenDocument> Open { get; } = new(StringComparer.Ordinal);

    /// <summary>The folders that are open in the editor.</summary>
    public List<string> Folders { get; } = [];

    /// <inheritdoc/>
    public string Resolve(string from, string relative)
    {
        var folder = Path.IsPathFullyQualified(from) ? Path.GetDirectoryName(from) : Folders.FirstOrDefault();
        return Path.GetFullPath(relative.Replace('/', Path.DirectorySeparatorChar), folder ?? Directory.GetCurrentDirectory());
    }

    /// <inheritdoc/>
    public string Show(string path)
    {
        // Relative to one folder only, so that no two files are shown as one.
        if (Folders is [var folder, ..] && path.StartsWith(folder + Path.DirectorySeparatorChar, StringComparison.Ordinal))
        {
            path = Path.GetRelativePath(folder, path);
        }

        return path.Replace(Path.DirectorySeparatorChar, '/');
    }

    /// <inheritdoc/>
    public byte[]? Read(string path)
    {
        if (Open.TryGetValue(path, out var document))
        {
            return document.Bytes;
        }

        try
        {
            FilesTogether.FinishAround(path);
            return RegularFile.Exists(path) ? FirstBytes(path) : null;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            // It vanished, or may not be read: to the reader it is not there.
            return null;
        }
    }

    /// <summary>The same files as they are now, whatever is edited after: for work that takes longer than until the next edit.</summary>
    public EditorFiles Copy()
    {
        var copy = new EditorFiles();
        copy.Folders.AddRange(Folders);
        foreach (var (path, document) in Open)
        {
            copy.Open[path] = new OpenDocument(document.Uri, document.Version, document.Text);
        }

        return copy;
    }

    /// <summary>The address of a path, as the client spells it where it has the document open.</summary>
    public string Uri(string path) => Open.TryGetValue(path, out var document) ? document.Uri : FilePaths.Uri(path);

    private static byte[] FirstBytes(string path)
    {
        using var stream = File.OpenRead(path);
        if (stream.Length < MostBytes)
        {
            return File.ReadAllBytes(path);
        }

        var bytes = new byte[MostBytes];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
