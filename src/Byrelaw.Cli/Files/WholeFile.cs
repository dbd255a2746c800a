namespace Byrelaw.Cli.Files;

/// <summary>Writes a file whole or not at all: beside the target, then moved into place.</summary>
internal static class WholeFile
{
    /// <summary>Writes a new file.</summary>
    /// <exception cref="CannotDoException">Something is there already.</exception>
    public static void WriteNew(string full, ReadOnlySpan<byte> bytes, Doors doors, bool forOwnerOnly = false)
    {
        if (File.Exists(full) || Directory.Exists(full))
        {
            throw new CannotDoException($"{doors.Show(full)} is there already; nothing was changed. Give another name");
        }

        Write(full, bytes, replace: false, forOwnerOnly ? UnixFileMode.UserRead | UnixFileMode.UserWrite : null);
    }

    /// <summary>Writes a file, in the place of an older one if there is one.</summary>
    public static void Write(string full, ReadOnlySpan<byte> bytes) => Write(full, bytes, replace: true, mode: null);

    /// <summary>Writes a new text file in UTF-8.</summary>
    public static void WriteNew(string full, string text, Doors doors, bool forOwnerOnly = false) =>
        WriteNew(full, Encoding.UTF8.GetBytes(text), doors, forOwnerOnly);

    /// <summary>Puts another text into a file that is there. A link stays a link: the file that it leads to is replaced.</summary>
    /// <exception cref="CannotDoException">The file may not be written to; it is as it was.</exception>
    public static void Replace(string full, string text, Doors doors)
    {
        var target = File.ResolveLinkTarget(full, returnFinalTarget: true)?.FullName ?? full;
        if (File.GetAttributes(target).HasFlag(FileAttributes.ReadOnly))
        {
            throw new CannotDoException($"{doors.Show(full)} may not be written to; nothing was changed");
        }

        Write(target, Encoding.UTF8.GetBytes(text), replace: true, OperatingSystem.IsWindows() ? null : File.GetUnixFileMode(target));
    }

    private static void Write(string full, ReadOnlySpan<byte> bytes, bool replace, UnixFileMode? mode)
    {
        var folder = Path.GetDirectoryName(full)!;
        Directory.CreateDirectory(folder);
        var fresh = Path.Combine(folder, $".{Path.GetFileName(full)}.{Environment.ProcessId}.new");
        try
        {
            var options = new FileStreamOptions { Mode = FileMode.Create, Access = FileAccess.Write };
            if (mode is not null && !OperatingSystem.IsWindows())
            {
                options.UnixCreateMode = mode;
            }

            using (var stream = new FileStream(fresh, options))
            {
                stream.Write(bytes);
            }

            if (mode is { } exactly && !OperatingSystem.IsWindows())
            {
                // What the system takes off new files is given back.
                File.SetUnixFileMode(fresh, exactly);
            }

            File.Move(fresh, full, replace);
        }
        finally
        {
            File.Delete(fresh);
        }
    }
}
