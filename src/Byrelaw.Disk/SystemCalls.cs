using System.Buffers.Binary;
using System.Runtime.InteropServices;

namespace Byrelaw.Disk;

/// <summary>
/// Two things that .NET does not tell or do: what kind of thing lies at a path, and changing two folders for each other in one step. Asked of
/// the system itself, on Linux and macOS; elsewhere, and on systems too old for them, the answer is "cannot be said" and "cannot be done".
/// </summary>
internal static partial class SystemCalls
{
    private const int FromHere = -100;
    private const int RegularFile = 0x8000;
    private const int KindMask = 0xF000;

    /// <summary>Whether something that is no folder is a file that holds bytes, and not a pipe, a socket or a device; null where that cannot be said.</summary>
    public static bool? IsRegularFile(string path)
    {
        Span<byte> about = stackalloc byte[512];
        try
        {
            // The kind stands in 16 bits: `stx_mask` (4), `stx_blksize` (4), `stx_attributes` (8), `stx_nlink` (4), `stx_uid` (4), `stx_gid` (4), then `stx_mode`
            // in Linux's `struct statx` (man 2 statx); `st_dev` (4), then `st_mode` in macOS's `struct stat` with 64-bit inodes (man 2 stat).
            var at = OperatingSystem.IsLinux() && StatX(FromHere, path, 0, mask: 1, about) == 0 ? 28
                : OperatingSystem.IsMacOS() && (RuntimeInformation.ProcessArchitecture == Architecture.X64 ? Stat64(path, about) : Stat(path, about)) == 0 ? 4
                : -1;
            return at < 0 ? null : (BinaryPrimitives.ReadUInt16LittleEndian(about[at..]) & KindMask) == RegularFile;
        }
        catch (Exception exception) when (exception is EntryPointNotFoundException or DllNotFoundException)
        {
            return null;
        }
    }

    /// <summary>Gives each of two things the place of the other, so that nobody ever sees either place empty.</summary>
    /// <returns>Whether that was done; where not, both are as they were.</returns>
    public static bool Exchange(string one, string other)
    {
        try
        {
            // RENAME_EXCHANGE (man 2 rename) and RENAME_SWAP (man 2 renamex_np): both are 2.
            return OperatingSystem.IsLinux() ? RenameAt2(FromHere, one, FromHere, other, flags: 2) == 0
                : OperatingSystem.IsMacOS() && RenameX(one, other, flags: 2) == 0;
        }
        catch (Exception exception) when (exception is EntryPointNotFoundException or DllNotFoundException)
        {
            return false;
        }
    }

    [LibraryImport("libc", EntryPoint = "statx", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int StatX(int folder, string path, int flags, uint mask, Span<byte> about);

    [LibraryImport("libc", EntryPoint = "stat", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Stat(string path, Span<byte> about);

    [LibraryImport("libc", EntryPoint = "stat$INODE64", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Stat64(string path, Span<byte> about);

    [LibraryImport("libc", EntryPoint = "renameat2", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int RenameAt2(int fromFolder, string from, int toFolder, string to, uint flags);

    [LibraryImport("libc", EntryPoint = "renamex_np", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int RenameX(string from, string to, uint flags);
}
