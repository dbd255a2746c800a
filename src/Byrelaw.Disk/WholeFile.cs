namespace Byrelaw.Disk;

/// <summary>Writes a file whole or not at all: beside its place, then moved into it. A link stays a link: the file that it leads to is written.</summary>
public static class WholeFile
{
    /// <summary>Who may read and write a file that is for its owner alone.</summary>
    public const UnixFileMode OwnerOnly = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    /// <summary>Writes a file where none is.</summary>
    /// <param name="path">Full; folders on the way are made.</param>
    /// <param name="bytes">All of it.</param>
    /// <returns>Whether it was written; false where something is there already, which is left alone.</returns>
    /// <exception cref="IOException">It cannot be written; nothing was changed.</exception>
    /// <exception cref="UnauthorizedAccessException">The same.</exception>
    public static bool WriteNew(string path, ReadOnlySpan<byte> bytes)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        using var turn = WritersTurn.Take(path);
        if (Path.Exists(path) || new FileInfo(path).LinkTarget is not null)
        {
            return false;
        }

        Write(path, bytes, mode: null);
        return true;
    }

    /// <summary>Puts other bytes into a file that is there, and leaves who may read it as it was.</summary>
    /// <param name="path">Full.</param>
    /// <param name="bytes">All of it.</param>
    /// <exception cref="IOException">It is a pipe or a device, or cannot be written; it is as it was.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written; it is as it was.</exception>
    public static void Replace(string path, ReadOnlySpan<byte> bytes)
    {
        var target = File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName ?? path;
        if (!RegularFile.Exists(target))
        {
            throw new FileNotFoundException($"{path} is not there any more; nothing was changed");
        }

        if (File.GetAttributes(target).HasFlag(FileAttributes.ReadOnly))
        {
            throw new UnauthorizedAccessException($"{path} may not be written to; nothing was changed");
        }

        using var turn = WritersTurn.Take(target);
        Write(target, bytes, OperatingSystem.IsWindows() ? null : File.GetUnixFileMode(target));
    }

    private static void Write(string path, ReadOnlySpan<byte> bytes, UnixFileMode? mode)
    {
        var fresh = Beside.Of(path, Beside.New);
        try
        {
            WriteBytes(fresh, bytes, mode);
            File.Move(fresh, path, overwrite: true);
        }
        finally
        {
            File.Delete(fresh);
        }
    }

    /// <summary>Writes a file that nobody else sees yet, down to the disk.</summary>
    /// <param name="path">Full; its folder is there.</param>
    /// <param name="bytes">All of it.</param>
    /// <param name="mode">Who may read it; null for what the system gives new files.</param>
    internal static void WriteBytes(string path, ReadOnlySpan<byte> bytes, UnixFileMode? mode)
    {
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write, BufferSize = 0 };
        if (mode is not null && !OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = mode;
        }

        using (var stream = new FileStream(path, options))
        {
            stream.Write(bytes);
            stream.Flush(flushToDisk: true);
        }

        if (mode is { } exactly && !OperatingSystem.IsWindows())
        {
            // What the system takes off new files is given back.
            File.SetUnixFileMode(path, exactly);
        }
    }
}
