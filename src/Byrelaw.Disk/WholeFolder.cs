namespace Byrelaw.Disk;

/// <summary>
/// Writes a folder whole or not at all: beside its place, then changed for an older one in a single step where the system can. Where it cannot,
/// a run that is cut off between two steps leaves the older one beside, and the next run puts it back. A link stays a link: the folder
/// that it leads to is written.
/// </summary>
public static class WholeFolder
{
    /// <summary>Writes a folder, in the place of an older one if there is one.</summary>
    /// <param name="target">The folder; what it lies in is made where it is missing.</param>
    /// <param name="fill">Puts everything into the new folder whose path it is given second; the older one's path, whether it is there or not, is first.</param>
    /// <param name="late">Called with the same two once the new folder has its place and the older one is about to go: what a person has
    /// put there meanwhile can still be saved. The older one's path is where it lies then.</param>
    /// <exception cref="IOException">Something cannot be written, or another run is writing there; the target is as it was.</exception>
    /// <exception cref="UnauthorizedAccessException">Something may not be written; the target is as it was.</exception>
    public static void Write(string target, Action<string, string> fill, Action<string, string>? late = null)
    {
        ArgumentNullException.ThrowIfNull(fill);
        target = PlaceOf(target);
        var parent = Path.GetDirectoryName(target) ?? throw new IOException("that is the root of the disk; give a new folder");
        Directory.CreateDirectory(parent);
        using var turn = WritersTurn.Take(target);
        var fresh = Beside.Of(target, Beside.New);
        try
        {
            Directory.CreateDirectory(fresh);
            fill(target, fresh);
            if (!Directory.Exists(target))
            {
                Directory.Move(fresh, target);
                return;
            }

            KeepWhoMayRead(target, fresh);
            var old = Change(fresh, target);
            Finish(old, target, late);
        }
        finally
        {
            RemoveIfItCanBe(fresh);
            RemoveIfItCanBe(Beside.Of(target, Beside.Old));
        }
    }

    /// <summary>The folder that a path means: the one at the end of a link.</summary>
    public static string PlaceOf(string path)
    {
        path = Path.TrimEndingDirectorySeparator(Path.GetFullPath(path));
        var there = new DirectoryInfo(path);
        return there.LinkTarget is null ? path : Path.TrimEndingDirectorySeparator(there.ResolveLinkTarget(returnFinalTarget: true)!.FullName);
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

    /// <summary>Gives the new folder the place of the older one.</summary>
    /// <returns>Where the older one lies now.</returns>
    private static string Change(string fresh, string target)
    {
        if (SystemCalls.Exchange(fresh, target))
        {
            return fresh;
        }

        var old = Beside.Of(target, Beside.Old);
        Directory.Move(target, old);
        try
        {
            Directory.Move(fresh, target);
            return old;
        }
        catch when (Directory.Exists(old) && !Directory.Exists(target))
        {
            Directory.Move(old, target);
            throw;
        }
    }

    /// <summary>Lets the caller save what came late; where that cannot be done, the older one gets its place back.</summary>
    private static void Finish(string old, string target, Action<string, string>? late)
    {
        try
        {
            late?.Invoke(old, target);
        }
        catch
        {
            if (!SystemCalls.Exchange(old, target))
            {
                Beside.Remove(target);
                Directory.Move(old, target);
            }

            throw;
        }
    }

    private static void KeepWhoMayRead(string target, string fresh)
    {
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(fresh, File.GetUnixFileMode(target));
        }
    }

    /// <summary>The new folder has its place by now, or the older one still has: what cannot be cleared is cleared by the next run.</summary>
    private static void RemoveIfItCanBe(string path)
    {
        try
        {
            Beside.Remove(path);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
        }
    }
}
