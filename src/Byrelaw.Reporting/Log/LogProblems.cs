namespace Byrelaw.Reporting.Log;

/// <summary>What may be wrong with a log, in words.</summary>
/// <param name="file">The log as shown.</param>
internal sealed class LogProblems(string file)
{
    private const string PutBack = "if you have a copy of the log, put back what stood there; without one, trust nothing that it says of that time";

    /// <summary>A line whose hash is no longer that of its words.</summary>
    public Diagnostic Changed(LogLine line) =>
        Error("L0101", line, "this line is not as it was written: its hash belongs to other words", PutBack);

    /// <summary>A line that stands where a line was, and is none any more.</summary>
    public Diagnostic Spoilt(LogLine line) =>
        Error("L0101", line, "this line is not as it was written: it cannot be read any more", PutBack);

    /// <summary>A line that is whole, and not the one that was followed by the next.</summary>
    public Diagnostic Replaced(LogLine line, LogLine next) =>
        Error("L0101", line, $"this line is not the one that was there when the line numbered {next.Entry!.Number} was written", PutBack);

    /// <summary>Lines that are not there.</summary>
    public Diagnostic Missing(LogLine before, string which) =>
        Error("L0102", before, $"{which} missing above this line", PutBack);

    /// <summary>A line above which a later one stands.</summary>
    public Diagnostic Moved(LogLine line, int after) =>
        Error("L0103", line, $"this line is number {line.Entry!.Number} and stands below number {after}", "put the lines back in the order of their numbers");

    /// <summary>A line that stands in the file twice.</summary>
    public Diagnostic Twice(LogLine line, LogLine first) =>
        Error("L0103", line, $"a line numbered {line.Entry!.Number} stands above already (line {first.Place} of the file)", "take out the one that was copied in");

    /// <summary>A line of which a crash left the first half.</summary>
    public Diagnostic Half(LogLine line) => Of("L0104", Severity.Warning, line, "only the first part of this line was written, as after a crash; no other line is missing here", null);

    /// <summary>A line that the program never wrote.</summary>
    public Diagnostic Foreign(LogLine line) => Error("L0105", line, "this line is none of the log's own", "take it out; notes belong in a file of their own");

    /// <summary>The kept hash is on no line.</summary>
    public Diagnostic NotThere(string hash, LogLine? last) => new(
        "L0106", Severity.Error, file, last?.Place ?? 1, 1, 1, $"no line has the hash {hash}: the log was cut before it, or written anew", null,
        "ask who has had the log in hand since you noted that hash; a backup may still hold the line", "");

    private Diagnostic Error(string code, LogLine line, string found, string help) => Of(code, Severity.Error, line, found, help);

    private Diagnostic Of(string code, Severity severity, LogLine line, string found, string? help) =>
        new(code, severity, file, line.Place, 1, Math.Max(1, line.Text.IndexOf(',', StringComparison.Ordinal)), found, null, help, line.Text);
}
