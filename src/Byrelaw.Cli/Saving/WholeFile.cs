using System.Text;

namespace Byrelaw.Cli.Saving;

/// <summary>Replaces a file's text, whole or not at all: it is written beside the file and moved into place.</summary>
public static class WholeFile
{
    /// <summary>Writes UTF-8 without a byte-order mark. A link stays a link: the file that it leads to is replaced.</summary>
    /// <param name="path">An existing file.</param>
    /// <param name="shown">Its path as people know it.</param>
    /// <param name="text">The new text.</param>
    /// <exception cref="CannotDoException">The file may not be written; it is as it was.</exception>
    /// <exception cref="IOException">Something went wrong; the file is as it was.</exception>
    /// <exception cref="UnauthorizedAccessException">The same.</exception>
    public static void Replace(string path, string shown, string text)
    {
        var target = File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName ?? path;
        if (File.GetAttributes(target).HasFlag(FileAttributes.ReadOnly))
        {
            throw new CannotDoException($"{shown} may not be written to; nothing was changed");
        }

        var fresh = Path.Combine(Path.GetDirectoryName(target)!, $".{Path.GetFileName(target)}.{Environment.ProcessId}.new");
        try
        {
            File.WriteAllText(fresh, text, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
            if (!OperatingSystem.IsWindows())
            {
                File.SetUnixFileMode(fresh, File.GetUnixFileMode(target));
            }

            File.Move(fresh, target, overwrite: true);
        }
        finally
        {
            File.Delete(fresh);
        }
    }
}
