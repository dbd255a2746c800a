using System.Security.Cryptography;

namespace Byrelaw.Disk;

/// <summary>
/// One run at a time writes a place; the next waits, and after a while gives up in a sentence. The system itself lets go of a turn whose run has
/// ended, however it ended. Whoever gets a turn clears what runs that were cut off have left in the same folder.
/// </summary>
public sealed class WritersTurn : IDisposable
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(20);

    private readonly string _path;
    private readonly FileStream _held;

    private WritersTurn(string path, FileStream held)
    {
        _path = path;
        _held = held;
    }

    /// <summary>How long a run waits for another.</summary>
    public static TimeSpan Patience { get; } = TimeSpan.FromSeconds(30);

    /// <summary>Waits for a place and takes the turn.</summary>
    /// <param name="place">The full path of the file or folder to be written; the folder it lies in is there.</param>
    /// <param name="patience">How long to wait; null for <see cref="Patience"/>.</param>
    /// <exception cref="IOException">Another run is still writing there.</exception>
    /// <exception cref="UnauthorizedAccessException">Nothing may be written in that folder.</exception>
    public static WritersTurn Take(string place, TimeSpan? patience = null)
    {
        var path = Beside.Of(place, Beside.Lock);
        var until = (patience ?? Patience).TotalMilliseconds + Environment.TickCount64;
        while (true)
        {
            if (TryTake(path) is { } turn)
            {
                LeftOvers.Clear(place);
                return turn;
            }

            if (Environment.TickCount64 >= until)
            {
                throw new IOException($"another run is writing {place}; nothing was changed. Try again when it has ended");
            }

            Thread.Sleep(Pause);
        }
    }

    /// <summary>Gives the turn to the next.</summary>
    public void Dispose()
    {
        if (!OperatingSystem.IsWindows())
        {
            File.Delete(_path);
        }

        _held.Dispose();
    }

    /// <summary>Takes a turn that nobody holds.</summary>
    /// <returns>Null where somebody does.</returns>
    internal static WritersTurn? TryTake(string path)
    {
        FileStream held;
        try
        {
            held = new FileStream(path, new FileStreamOptions
            {
                Mode = FileMode.OpenOrCreate,
                Access = FileAccess.ReadWrite,
                Share = FileShare.None,
                BufferSize = 0,
                Options = OperatingSystem.IsWindows() ? FileOptions.DeleteOnClose : FileOptions.None,
            });
        }
        catch (IOException exception) when (InUse.IsTheReason(exception))
        {
            return null;
        }
        catch (UnauthorizedAccessException)
        {
            throw new UnauthorizedAccessException($"nothing may be written in {Path.GetDirectoryName(path)}");
        }

        try
        {
            if (OperatingSystem.IsWindows() || IsStillThere(held, path))
            {
                return new WritersTurn(path, held);
            }
        }
        catch
        {
            held.Dispose();
            throw;
        }

        held.Dispose();
        return null;
    }

    /// <summary>Whether the file that is held is the one at its path: the run before may have taken that away between our opening and our
    /// holding it, and a third may have made another. A length by chance tells them apart.</summary>
    private static bool IsStillThere(FileStream held, string path)
    {
        var sign = RandomNumberGenerator.GetInt32(1, 1 << 12);
        held.SetLength(sign);
        var there = new FileInfo(path);
        return there.Exists && there.Length == sign;
    }
}
