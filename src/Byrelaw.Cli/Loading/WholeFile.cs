using System.Text;

namespace Byrelaw.Cli.Loading;

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

        Write(full, bytes, replace: false, forOwnerOnly);
    }

    /// <summary>Writes a file, in the place of an older one if there is one.</summary>
    public static void Write(string full, ReadOnlySpan<byte> bytes) => Write(full, bytes, replace: true, forOwnerOnly: false);

    /// <summary>Writes a new text file in UTF-8.</summary>
    public static void WriteNew(string full, string text, Doors doors, bool forOwnerOnly = false) =>
        WriteNew(full, Encoding.UTF8.GetBytes(text), doors, forOwnerOnly);

    private static void Write(string full, ReadOnlySpan<byte> bytes, bool replace, bool forOwnerOnly)
    {
        var folder = Path.GetDirectoryName(full)!;
        Directory.CreateDirectory(folder);
        var fresh = Path.Combine(folder, $".{Path.GetFileName(full)}.{Environment.ProcessId}.new");
        try
        {
            var options = new FileStreamOptions { Mode = FileMode.Create, Access = FileAccess.Write };
            if (forOwnerOnly && !OperatingSystem.IsWindows())
            {
                options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
            }

            using (var stream = new FileStream(fresh, options))
            {
                stream.Write(bytes);
            }

            File.Move(fresh, full, replace);
        }
        finally
        {
            File.Delete(fresh);
        }
    }
}
