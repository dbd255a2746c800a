namespace Byrelaw.Cli.Files;

/// <summary>The innermost folder that holds all of some files.</summary>
internal static class CommonFolder
{
    /// <param name="files">Full paths, at least one.</param>
    public static string Of(IReadOnlyList<string> files)
    {
        var folder = Path.GetDirectoryName(files[0])!;
        while (files.Any(file => !file.StartsWith(Path.EndsInDirectorySeparator(folder) ? folder : folder + Path.DirectorySeparatorChar, StringComparison.Ordinal)))
        {
            folder = Path.GetDirectoryName(folder) ?? throw new CannotDoException("the files lie on different disks; bring them together first");
        }

        return folder;
    }
}
