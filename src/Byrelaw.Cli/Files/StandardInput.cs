namespace Byrelaw.Cli.Files;

/// <summary>A rule file that comes in on the standard input, as if it lay in the folder in which people work.</summary>
/// <param name="disk">The files that it uses.</param>
/// <param name="own">Where it would lie.</param>
/// <param name="bytes">What came in.</param>
public sealed class StandardInput(IRuleFiles disk, string own, byte[] bytes) : IRuleFiles
{
    /// <summary>What people write for it in place of a file's name.</summary>
    public const string Sign = "-";

    /// <inheritdoc/>
    public string Resolve(string from, string relative) => disk.Resolve(from, relative);

    /// <inheritdoc/>
    public string Show(string path) => path == own ? "standard input" : disk.Show(path);

    /// <inheritdoc/>
    public byte[]? Read(string path) => path == own ? bytes : disk.Read(path);
}
