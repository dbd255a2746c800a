namespace Byrelaw.Reporting.Tests.Log;

/// <summary>A log in a folder of its own, and what becomes of it.</summary>
internal sealed class SomeLog : IDisposable
{
    private int _second;

    public SomeLog(int lines = 0, string by = "")
    {
        for (var i = 0; i < lines; i++)
        {
            Append(by);
        }
    }

    public string Folder { get; } = Directory.CreateTempSubdirectory("byrelaw-log-").FullName;

    public string File => JudgingLog.In(Folder);

    public byte[] Bytes => System.IO.File.ReadAllBytes(File);

    public List<string> Lines => [.. Encoding.UTF8.GetString(Bytes).TrimEnd('\n').Split('\n')];

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    public Appended Append(string by = "") => JudgingLog.Append(Folder, JudgingLog.FileName, Entry(by));

    /// <summary>The codes that a changed log is told by.</summary>
    public static List<string> Codes(byte[] bytes, string? kept = null) => [.. LogCheck.Of(bytes, JudgingLog.FileName, kept).Problems.Select(problem => problem.Code)];

    public static List<string> Codes(IEnumerable<string> lines, string? kept = null) => Codes(Join(lines), kept);

    public static byte[] Join(IEnumerable<string> lines) => Encoding.UTF8.GetBytes(string.Concat(lines.Select(line => line + "\n")));

    private LogEntry Entry(string by) => new(
        0, string.Create(CultureInfo.InvariantCulture, $"2026-09-21T06:30:{Interlocked.Increment(ref _second) % 60:D2}Z"), "draft", by.Length == 0 ? null : by,
        "Long Acre, \"spring\" 2026", "spring.byre", "byrelaw 0.1.0", "sha256:" + new string('a', 64), "sha256:" + new string('b', 64), "2026-09-20", null,
        [new LoggedList("recipients", "2026-10-20", "2026-10-21", 1, 2, 0, 2, 1)], "sha256:" + new string('c', 64), null);
}
