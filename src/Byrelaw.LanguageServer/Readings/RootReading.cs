namespace Byrelaw.LanguageServer.Readings;

/// <summary>What came of reading one file and all it uses.</summary>
/// <param name="Path">The file.</param>
/// <param name="View">What was read.</param>
/// <param name="Asked">The files that it was read from.</param>
internal sealed record RootReading(string Path, RulebookView View, AskedFiles Asked)
{
    /// <summary>Reads; null where there is no such file.</summary>
    public static RootReading? Read(string path, IRuleFiles files)
    {
        var asked = new AskedFiles(files);
        return RulebookReader.Read(path, asked) is { } reading ? new RootReading(path, new RulebookView(reading), asked) : null;
    }

    /// <summary>The path of one of its files, by the name that messages use.</summary>
    public string PathOf(string shown) => Asked.ByShown.GetValueOrDefault(shown, shown);

    /// <summary>One of its files by path; null where it is none of them.</summary>
    public SourceFile? FileAt(string path) => View.Files.FirstOrDefault(file => PathOf(file.Path) == path);
}
