namespace Byrelaw.Disk;

/// <summary>
/// Files as the program reads them: only such as hold their bytes. A pipe may never end, a device answers for ever, and either can be read
/// once only; they are refused in a sentence before they are opened.
/// </summary>
public static class RegularFile
{
    /// <summary>Whether a file is there; false for a folder.</summary>
    /// <param name="path">Full or relative.</param>
    /// <exception cref="IOException">What is there is a pipe, a socket or a device.</exception>
    public static bool Exists(string path)
    {
        if (!File.Exists(path))
        {
            return false;
        }

        return IsOne(path) ? true : throw new IOException($"{path} is a pipe or a device, not a file; save what it gives as a file, and name that");
    }

    /// <summary>All bytes of a file.</summary>
    /// <returns>Null where none is there.</returns>
    /// <exception cref="IOException">What is there is a pipe, a socket or a device, or it cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public static byte[]? Read(string path) => Exists(path) ? File.ReadAllBytes(path) : null;

    /// <summary>How many bytes a file has; 0 where none is there.</summary>
    public static long Length(string path) => Exists(path) ? new FileInfo(path).Length : 0;

    /// <summary>Whether what lies at a path, and is no folder, holds its bytes.</summary>
    internal static bool IsOne(string path) => SystemCalls.IsRegularFile(path) ?? !File.GetAttributes(path).HasFlag(FileAttributes.Device);
}
