using System.Globalization;

namespace Byrelaw.Disk;

/// <summary>One of several files that are written together.</summary>
/// <param name="Path">Relative to their folder, forward slashes.</param>
/// <param name="Bytes">All of it.</param>
/// <param name="Mode">Who may read it; null for as it was, or as new files are.</param>
public sealed record FileToWrite(string Path, ReadOnlyMemory<byte> Bytes, UnixFileMode? Mode = null)
{
    /// <summary>What stood there when these bytes were made from it, nothing where there was no file; null where nobody minds what stands there.</summary>
    public ReadOnlyMemory<byte>? MadeFrom { get; init; }
}

/// <summary>
/// Writes several files of a folder, all or none. They are written into a folder beside first, with what they replace; giving that folder
/// another name is the one step that decides. A run that is cut off before it has changed nothing, one that is cut off after it is finished by
/// whoever comes next and reads or writes there. Where a file cannot be put into its place, those that were are put back.
/// </summary>
public static class FilesTogether
{
    private const string Staged = ".byrelaw-files-new";
    private const string Decided = ".byrelaw-files-decided";
    private const string Undone = ".byrelaw-files-undone";
    private const string Places = "places.txt";
    private const char Replacing = '=';
    private const char Adding = '+';
    private const int MostAttempts = 5;

    /// <summary>Writes them.</summary>
    /// <param name="folder">Full; made where it is missing.</param>
    /// <param name="files">At places where no folder lies.</param>
    /// <param name="onlyNew">Whether none of them may be there already.</param>
    /// <exception cref="IOException">They cannot all be written; none is.</exception>
    /// <exception cref="UnauthorizedAccessException">The same.</exception>
    public static void Write(string folder, IReadOnlyCollection<FileToWrite> files, bool onlyNew = false)
    {
        ArgumentNullException.ThrowIfNull(files);
        Directory.CreateDirectory(folder);
        using var turn = WritersTurn.Take(In(folder, Decided));
        Settle(folder);
        if (onlyNew && files.Select(file => PlaceOf(folder, file.Path)).FirstOrDefault(Path.Exists) is { } there)
        {
            throw new IOException($"{there} is there already; nothing was changed. Give another name");
        }

        TryDecide(folder, files);
        Settle(folder);
    }

    /// <summary>
    /// Writes what is made from the files as they stand: nobody else who takes turns writes meanwhile, and where another program has changed one of them it is made anew.
    /// </summary>
    /// <param name="folder">Full; made where it is missing.</param>
    /// <param name="make">Reads, and says what to write; nothing is written for none.</param>
    /// <exception cref="IOException">They cannot all be written, or another program goes on changing them; none is.</exception>
    /// <exception cref="UnauthorizedAccessException">The same.</exception>
    public static void Change(string folder, Func<IReadOnlyCollection<FileToWrite>> make)
    {
        ArgumentNullException.ThrowIfNull(make);
        Directory.CreateDirectory(folder);
        using var turn = WritersTurn.Take(In(folder, Decided));
        for (var attempt = 1; attempt <= MostAttempts; attempt++)
        {
            Settle(folder);
            var files = make();
            if (files.Count == 0 || TryDecide(folder, files))
            {
                Settle(folder);
                return;
            }
        }

        throw new IOException($"another program goes on changing files in {folder}; nothing was written. Close them there, and try again");
    }

    /// <summary>Finishes what a run that was cut off has decided, in the folders around a file.</summary>
    /// <param name="file">Full path.</param>
    /// <exception cref="IOException">It cannot be finished.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be.</exception>
    public static void FinishAround(string file)
    {
        for (var folder = Path.GetDirectoryName(file); folder is not null; folder = Path.GetDirectoryName(folder))
        {
            if (Directory.Exists(In(folder, Decided)) || Directory.Exists(In(folder, Undone)))
            {
                using var turn = WritersTurn.Take(In(folder, Decided));
                Settle(folder);
            }
        }
    }

    /// <summary>Finishes what a run that was cut off has decided in a folder, and clears what it had not decided yet.</summary>
    /// <param name="folder">Full path.</param>
    /// <exception cref="IOException">It cannot be done.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be.</exception>
    public static void FinishIn(string folder)
    {
        if (Directory.Exists(folder) && Directory.EnumerateFileSystemEntries(folder, ".*byrelaw-files-*", new EnumerationOptions { AttributesToSkip = 0 }).Any())
        {
            using var turn = WritersTurn.Take(In(folder, Decided));
            Settle(folder);
        }
    }

    private static string In(string folder, string name) => Path.Combine(folder, name);

    /// <summary>Takes the one step that decides; not where a file is no longer what its new bytes were made from.</summary>
    private static bool TryDecide(string folder, IReadOnlyCollection<FileToWrite> files)
    {
        var staged = In(folder, Staged);
        try
        {
            Stage(folder, staged, files);
            if (files.All(file => IsAsItWas(folder, file)))
            {
                Directory.Move(staged, In(folder, Decided));
                return true;
            }

            Beside.Remove(staged);
            return false;
        }
        catch
        {
            Beside.Remove(staged);
            throw;
        }
    }

    private static bool IsAsItWas(string folder, FileToWrite file) =>
        file.MadeFrom is not { } from || (RegularFile.Read(PlaceOf(folder, file.Path)) ?? []).AsSpan().SequenceEqual(from.Span);

    private static void Stage(string folder, string staged, IReadOnlyCollection<FileToWrite> files)
    {
        Directory.CreateDirectory(staged);
        var number = 0;
        foreach (var file in files)
        {
            var (place, name) = (PlaceOf(folder, file.Path), (++number).ToString(CultureInfo.InvariantCulture));
            if (File.Exists(place) && File.GetAttributes(place).HasFlag(FileAttributes.ReadOnly))
            {
                throw new UnauthorizedAccessException($"{place} may not be written to; nothing was changed");
            }

            if (File.Exists(place))
            {
                File.Copy(place, In(staged, $"old-{name}"));
            }

            WholeFile.WriteBytes(In(staged, $"new-{name}"), file.Bytes.Span, file.Mode ?? (File.Exists(place) && !OperatingSystem.IsWindows() ? File.GetUnixFileMode(place) : null));
        }

        WholeFile.WriteBytes(In(staged, Places), System.Text.Encoding.UTF8.GetBytes(string.Concat(files.Select(file =>
            (File.Exists(PlaceOf(folder, file.Path)) ? Replacing : Adding) + file.Path + "\n"))), mode: null);
    }

    /// <summary>Brings a folder to one side or the other.</summary>
    private static void Settle(string folder)
    {
        Beside.Remove(In(folder, Staged));
        if (Directory.Exists(In(folder, Undone)))
        {
            Undo(folder);
        }

        if (!Directory.Exists(In(folder, Decided)))
        {
            return;
        }

        try
        {
            PutIn(folder);
        }
        catch
        {
            Directory.Move(In(folder, Decided), In(folder, Undone));
            Undo(folder);
            throw;
        }
    }

    private static void PutIn(string folder)
    {
        var decided = In(folder, Decided);
        var number = 0;
        foreach (var line in File.ReadAllLines(In(decided, Places)))
        {
            var fresh = In(decided, $"new-{++number}");
            if (File.Exists(fresh))
            {
                var place = PlaceOf(folder, line[1..]);
                Directory.CreateDirectory(Path.GetDirectoryName(place)!);
                File.Move(fresh, place, overwrite: true);
            }
        }

        Remove(decided, folder);
    }

    private static void Undo(string folder)
    {
        var undone = In(folder, Undone);
        var number = 0;
        foreach (var line in File.ReadAllLines(In(undone, Places)))
        {
            var (place, old) = (PlaceOf(folder, line[1..]), In(undone, $"old-{++number}"));
            if (File.Exists(In(undone, $"new-{number}")))
            {
                // It never came into its place.
                continue;
            }

            if (line[0] == Adding)
            {
                File.Delete(place);
            }
            else if (File.Exists(old))
            {
                File.Move(old, place, overwrite: true);
            }
        }

        Remove(undone, folder);
    }

    /// <summary>Under another name first: half a list of places must never be taken for a whole one.</summary>
    private static void Remove(string done, string folder)
    {
        var staged = In(folder, Staged);
        Directory.Move(done, staged);
        Beside.Remove(staged);
    }

    /// <summary>A link stays a link: the file that it leads to is written.</summary>
    private static string PlaceOf(string folder, string path) =>
        Path.Combine(folder, path.Replace('/', Path.DirectorySeparatorChar)) is var place && new FileInfo(place).LinkTarget is not null && File.ResolveLinkTarget(place, returnFinalTarget: true) is { } target
            ? target.FullName : place;
}
