using System.Reflection;

namespace Byrelaw.Language.BaseRules;

/// <summary>The rule files that the program carries, by name and edition: <c>use base recipients edition 1</c>.</summary>
/// <remarks>
/// An edition never changes and none is taken away, so an update of the program alters no answer. They lie in the program itself, so that a
/// farm's folder can be moved.
/// </remarks>
public static class BaseEditions
{
    /// <summary>The newest edition.</summary>
    public const int Newest = 1;

    private const string Folder = "base/";
    private const string Scheme = "base:";

    private static readonly Assembly Here = typeof(BaseEditions).Assembly;

    /// <summary>What stands in each edition, by edition and name.</summary>
    private static readonly FrozenDictionary<(int Edition, string Name), string> Resources = Here.GetManifestResourceNames()
        .Where(name => name.StartsWith(Folder, StringComparison.Ordinal))
        .ToFrozenDictionary(name => (EditionOf(name), NameOf(name)), name => name);

    /// <summary>The names of an edition's files, as <c>use base</c> writes them: the file's name, with spaces for hyphens.</summary>
    public static IReadOnlyList<string> Names(int edition) =>
        [.. Resources.Keys.Where(key => key.Edition == edition).Select(key => key.Name).Order(StringComparer.Ordinal)];

    /// <summary>The editions that hold a file, oldest first; none for a name that no edition has.</summary>
    public static IReadOnlyList<int> Editions(string name) => [.. Resources.Keys.Where(key => key.Name == name).Select(key => key.Edition).Order()];

    /// <summary>The bytes of a file of an edition; null where there is none.</summary>
    public static byte[]? Read(int edition, string name)
    {
        if (!Resources.TryGetValue((edition, name), out var resource))
        {
            return null;
        }

        using var stream = Here.GetManifestResourceStream(resource)!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    /// <summary>Whether a path is that of a file of the program's own, which lies on no disk.</summary>
    public static bool IsPath(string path) => path.StartsWith(Scheme, StringComparison.Ordinal);

    /// <summary>The path by which a file of an edition is read, such as <c>base:1/recipients</c>.</summary>
    public static string Path(int edition, string name) => $"{Scheme}{edition}/{name}";

    /// <summary>What <see cref="Path"/> joined.</summary>
    internal static (int Edition, string Name) Parse(string path)
    {
        var slash = path.IndexOf('/', StringComparison.Ordinal);
        return (int.Parse(path.AsSpan(Scheme.Length, slash - Scheme.Length), CultureInfo.InvariantCulture), path[(slash + 1)..]);
    }

    /// <summary>A file's name as <c>use base</c> writes it.</summary>
    internal static string Spaced(string file) => System.IO.Path.GetFileNameWithoutExtension(file).Replace('-', ' ');

    private static int EditionOf(string resource) => int.Parse(resource.AsSpan(Folder.Length, resource.IndexOf('/', Folder.Length) - Folder.Length), CultureInfo.InvariantCulture);

    private static string NameOf(string resource) => Spaced(resource[(resource.LastIndexOf('/') + 1)..]);
}
