namespace Byrelaw.Cli.Files;

/// <summary>What lies where a packed file would go.</summary>
internal enum TargetState
{
    New,
    Same,
    Differs,
}

/// <summary>The place of a packed file in a folder.</summary>
internal static class UnpackTarget
{
    /// <summary>The full path.</summary>
    public static string PathOf(string folder, PackedFile file) => Path.Combine(folder, file.Path.Replace('/', Path.DirectorySeparatorChar));

    /// <summary>What is there now.</summary>
    /// <exception cref="CannotDoException">A folder lies where the file would go, or the way leads out of the folder through a link.</exception>
    public static TargetState StateOf(string folder, PackedFile file)
    {
        var path = PathOf(folder, file);
        for (var above = Path.GetDirectoryName(path)!; above.Length > folder.Length; above = Path.GetDirectoryName(above)!)
        {
            if (File.Exists(above) || new DirectoryInfo(above).LinkTarget is not null)
            {
                throw new CannotDoException($"{file.Path} cannot be unpacked: {above} is not a folder of its own; nothing was changed");
            }
        }

        if (Directory.Exists(path) || new FileInfo(path).LinkTarget is not null)
        {
            throw new CannotDoException($"{file.Path} cannot be unpacked: a folder or a link lies there; nothing was changed");
        }

        return !RegularFile.Exists(path) ? TargetState.New
            : file.Bytes.AsSpan().SequenceEqual(File.ReadAllBytes(path)) ? TargetState.Same
            : TargetState.Differs;
    }
}
