namespace Byrelaw.Cli.Files;

/// <summary>A rule file that comes in on the standard input.</summary>
public static class StandardInput
{
    /// <summary>What people write for it in place of a file's name.</summary>
    public const string Sign = "-";

    /// <summary>Files on disk, and among them what came in as if it lay in the folder in which people work.</summary>
    /// <param name="disk">The files that it uses.</param>
    /// <param name="own">Where it would lie.</param>
    /// <param name="bytes">What came in.</param>
    public static IRuleFiles Among(IRuleFiles disk, string own, byte[] bytes) =>
        new ReplacedFiles(disk, path => path == own ? bytes : null, path => path == own ? "standard input" : null);
}
