namespace Byrelaw.LanguageServer.Files;

/// <summary>Turns the protocol's addresses of documents into paths, and back.</summary>
internal static class FilePaths
{
    /// <summary>The path of a file on disk; an address of another kind, such as a document not saved yet, stands for itself.</summary>
    public static string Of(string uri) =>
        System.Uri.TryCreate(uri, UriKind.Absolute, out var address) && address.IsFile ? Path.GetFullPath(address.LocalPath) : uri;

    /// <summary>The address of a path.</summary>
    public static string Uri(string path) => Path.IsPathFullyQualified(path) ? new Uri(path).AbsoluteUri : path;
}
