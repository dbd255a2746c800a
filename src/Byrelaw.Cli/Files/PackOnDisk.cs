namespace Byrelaw.Cli.Files;

/// <summary>A pack as it lies on disk.</summary>
internal static class PackOnDisk
{
    /// <summary>Reads it; nothing is believed that its own digests do not bear out.</summary>
    /// <param name="file">As written on the command line.</param>
    /// <param name="doors">Says where relative paths start.</param>
    /// <exception cref="CannotDoException">No file is there.</exception>
    public static (Pack? Pack, PackProblem? Problem) Read(string file, Doors doors)
    {
        var full = doors.Full(file);
        if (!RegularFile.Exists(full))
        {
            throw new CannotDoException($"no such file: {file}");
        }

        // A file that is far too large is not even read.
        return new FileInfo(full).Length > PackLimits.Bytes ? PackReader.Read(new byte[PackLimits.Bytes + 1]) : PackReader.Read(File.ReadAllBytes(full));
    }

    /// <summary>The number of the newest pack of the same rules in a folder; 0 for none.</summary>
    /// <param name="folder">Full path.</param>
    /// <param name="opens">The file that those packs open.</param>
    public static int NewestNumber(string folder, string opens) => !Directory.Exists(folder) ? 0
        : Directory.EnumerateFiles(folder, "*.pack").Where(file => SystemSaysFile(file) && new FileInfo(file).Length <= PackLimits.Bytes)
            .Select(file => PackReader.Read(File.ReadAllBytes(file)).Pack).Where(pack => pack?.Opens == opens).Select(pack => pack!.Issue.Number).DefaultIfEmpty(0).Max();

    private static bool SystemSaysFile(string file)
    {
        try
        {
            return RegularFile.Exists(file);
        }
        catch (IOException)
        {
            return false;
        }
    }
}
