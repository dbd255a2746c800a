namespace Byrelaw.Reporting.Log;

/// <summary>What appending came to.</summary>
/// <param name="Number">Of the new line.</param>
/// <param name="Hash">Of the new line.</param>
/// <param name="AfterHalf">Whether the line before it was only half there, as after a crash.</param>
/// <param name="IsBroken">Whether a line before it was changed, moved or taken out.</param>
public sealed record Appended(int Number, string Hash, bool AfterHalf, bool IsBroken);

/// <summary>
/// The log of what was judged: one file in the programme's folder, one line of JSON a judging, each with the hash of the line before. It is only ever
/// added to, whole lines at a time, by one run after the other.
/// </summary>
public static class JudgingLog
{
    /// <summary>The file's name.</summary>
    public const string FileName = "judging-log.jsonl";

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(20);

    /// <summary>Where the log of a folder is.</summary>
    public static string In(string folder) => Path.Combine(folder, FileName);

    /// <summary>Adds a line.</summary>
    /// <param name="folder">The programme's.</param>
    /// <param name="shown">The log as shown.</param>
    /// <param name="entry">What to log; its number and the hash before it are filled in.</param>
    /// <exception cref="IOException">It cannot be written, is in use for long, or is no log; it is as it was.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written.</exception>
    public static Appended Append(string folder, string shown, LogEntry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        using var file = Open(In(folder), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        var bytes = All(file);
        var lines = LogLine.Read(bytes);
        var last = lines.Where(line => line.Entry is not null).MaxBy(line => line.Entry!.Number);
        if (last is null && lines.Any(line => line.IsEnded || !line.MayBeStartOf(1)))
        {
            throw new IOException($"{shown} holds no line of a log");
        }

        entry = entry with { Number = (last?.Entry!.Number ?? 0) + 1, Before = last?.Hash };
        var (line, hash) = LogLine.Seal(entry);
        Write(file, bytes.Length, $"{(bytes is [.., not (byte)'\n'] ? "\n" : "")}{line}\n");
        return new Appended(
            entry.Number, hash, AfterHalf: lines is [.., { IsEnded: false, Entry: null }],
            IsBroken: LogChain.Check(lines, new LogProblems(shown)).Any(problem => problem.Severity == Severity.Error));
    }

    /// <summary>Reads and checks the log of a folder.</summary>
    /// <param name="folder">The programme's.</param>
    /// <param name="shown">The log as shown.</param>
    /// <param name="kept">See <see cref="LogCheck.Of"/>.</param>
    /// <returns>Null where there is none and no hash of one was kept.</returns>
    /// <exception cref="IOException">It cannot be read, or is in use for long.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public static LogCheck? Check(string folder, string shown, string? kept = null)
    {
        if (!File.Exists(In(folder)))
        {
            return kept is null ? null : LogCheck.Of([], shown, kept);
        }

        using var file = Open(In(folder), FileMode.Open, FileAccess.Read, FileShare.Read);
        return LogCheck.Of(All(file), shown, kept);
    }

    /// <summary>Opens it, after waiting for another run that has it open; the system closes it to others meanwhile.</summary>
    private static FileStream Open(string path, FileMode mode, FileAccess access, FileShare share)
    {
        // Refuses a pipe before it is opened: that would wait for ever.
        RegularFile.Exists(path);
        for (var waited = TimeSpan.Zero; ; waited += Pause)
        {
            try
            {
                return new FileStream(path, mode, access, share, bufferSize: 0);
            }
            catch (IOException exception) when (InUse.IsTheReason(exception) && waited < Patience)
            {
                Thread.Sleep(Pause);
            }
        }
    }

    private static byte[] All(FileStream file)
    {
        var bytes = new byte[file.Length];
        file.ReadExactly(bytes);
        return bytes;
    }

    /// <summary>All of it or, where the disk is full, nothing.</summary>
    private static void Write(FileStream file, long end, string text)
    {
        try
        {
            file.Position = end;
            file.Write(Encoding.UTF8.GetBytes(text));
            file.Flush(flushToDisk: true);
        }
        catch (IOException)
        {
            file.SetLength(end);
            throw;
        }
    }
}
