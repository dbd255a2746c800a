namespace Byrelaw.Cli;

/// <summary>The log beside a programme's file: what was judged is added to it, and it is checked.</summary>
internal static class LogOfJudging
{
    /// <summary>Adds a line. A log that cannot be kept is told, and does not stop the work.</summary>
    /// <param name="draft">What was judged.</param>
    /// <param name="command">By which command.</param>
    /// <param name="programme">The programme's file.</param>
    /// <param name="by">Who judges.</param>
    /// <param name="doors">Where it is told.</param>
    /// <param name="drawn">Sheets that were drawn by it.</param>
    /// <returns>Where the new line stands and its hash, for the answers; empty where there is none.</returns>
    public static string Add(Draft draft, string command, string programme, string? by, Doors doors, params IReadOnlyList<string> drawn)
    {
        if (!doors.KeepsLog)
        {
            return "";
        }

        var (folder, shown) = Place(programme, doors);
        try
        {
            var entry = LogEntry.Of(draft, command, Path.GetFileName(programme), by, doors.Clock.GetUtcNow());
            entry = drawn.Count == 0 ? entry : entry with { Sheets = [.. (entry.Sheets ?? []).Concat(drawn).Distinct()] };
            var added = JudgingLog.Append(folder, shown, entry);
            doors.Err.Write(added.AfterHalf ? $"The last line of {shown} is only half there, as after a crash; the log goes on below it.\n" : "");
            doors.Err.Write(added.IsBroken ? $"{shown} is not as it was written; byrelaw check {PlainText.Clean(programme)} says where. The log goes on all the same.\n" : "");
            return $"In the log: {shown}, number {added.Number}, {added.Hash}\n";
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            doors.Err.WriteLine($"This is not in the log of judging, which cannot be kept here: {PlainText.Clean(exception.Message.TrimEnd('.'))}.");
            return "";
        }
    }

    /// <summary>Checks the log beside a programme's file.</summary>
    /// <returns>Null where there is none and no hash of one was kept.</returns>
    public static LogCheck? Check(string programme, string? keptHash, Doors doors)
    {
        var (folder, shown) = Place(programme, doors);
        return JudgingLog.Check(folder, shown, keptHash);
    }

    /// <summary>A line about a log.</summary>
    public static string Summed(LogCheck log, string programme, Doors doors) =>
        $"{Place(programme, doors).Shown}: " + (log.Problems.Any(problem => problem.Severity == Severity.Error) ? "not as it was written"
            : $"{Numbers.Count(log.Entries.Length, "judging", "judgings")}, no line changed or missing; ends with {log.LastHash}");

    /// <summary>Whether a problem is one of the log's.</summary>
    public static bool Owns(Diagnostic problem) => problem.Code.StartsWith('L');

    private static (string Folder, string Shown) Place(string programme, Doors doors)
    {
        var folder = Path.GetDirectoryName(doors.Full(programme))!;
        return (folder, PlainText.Clean(doors.Show(JudgingLog.In(folder))));
    }
}
