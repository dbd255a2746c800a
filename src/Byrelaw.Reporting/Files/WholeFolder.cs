namespace Byrelaw.Reporting.Files;

/// <summary>Writes a folder whole or not at all: beside the target, then moved into place. An older folder stays until the new one is whole.</summary>
public static class WholeFolder
{
    /// <summary>Writes a folder, in the place of an older one if there is one.</summary>
    /// <param name="target">The folder; what it lies in is made where it is missing.</param>
    /// <param name="fill">Puts everything into the new folder whose path it is given; what of an older one shall stay, too.</param>
    /// <exception cref="IOException">Something cannot be written; the target is as it was.</exception>
    /// <exception cref="UnauthorizedAccessException">The same.</exception>
    public static void Write(string target, Action<string> fill)
    {
        ArgumentNullException.ThrowIfNull(fill);
        target = Path.TrimEndingDirectorySeparator(Path.GetFullPath(target));
        var parent = Path.GetDirectoryName(target) ?? throw new IOException("that is the root of the disk; give a new folder");
        Directory.CreateDirectory(parent);
        var fresh = Path.Combine(parent, $".{Path.GetFileName(target)}.{Environment.ProcessId}.new");
        var old = Path.Combine(parent, $".{Path.GetFileName(target)}.{Environment.ProcessId}.old");
        try
        {
            Remove(fresh);
            Directory.CreateDirectory(fresh);
            fill(fresh);
            if (Directory.Exists(target))
            {
                Directory.Move(target, old);
            }

            MoveIn(fresh, target, old);
        }
        finally
        {
            Remove(fresh);
            Remove(old);
        }
    }

    /// <summary>Puts a file into a folder, with the folders on the way to it.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="path">Relative to it, forward slashes.</param>
    /// <param name="bytes">What the file holds.</param>
    public static void Put(string folder, string path, ReadOnlySpan<byte> bytes)
    {
        var full = Path.Combine(folder, path.Replace('/', Path.DirectorySeparatorChar));
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        File.WriteAllBytes(full, bytes);
    }

    private static void MoveIn(string fresh, string target, string old)
    {
        try
        {
            Directory.Move(fresh, target);
        }
        catch when (Directory.Exists(old) && !Directory.Exists(target))
        {
            Directory.Move(old, target);
            throw;
        }
    }

    private static void Remove(string folder)
    {
        if (Directory.Exists(folder))
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
