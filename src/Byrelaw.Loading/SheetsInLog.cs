using System.Text.Json;

namespace Byrelaw.Loading;

/// <summary>
/// Sheets that the log of judging beside a programme names, as drawn or as open: the ledger in the records' folder must have them. Where it is gone before anything of them was recorded, the log alone
/// knows that they are out.
/// </summary>
internal static class SheetsInLog
{
    private const string Log = "judging-log.jsonl";
    private const string Key = "\"sheets\":[";

    /// <summary>Each with the day on which it was first named; none where there is no log.</summary>
    /// <param name="programme">The full path of the programme's file.</param>
    public static ImmutableArray<(string Number, LocalDate Day)> Beside(string programme)
    {
        var path = Path.Combine(Path.GetDirectoryName(programme)!, Log);
        try
        {
            return !RegularFile.Exists(path) ? [] : Named(path);
        }
        catch (IOException)
        {
            // A pipe in its place names nothing; that no log can be kept there is told where it should be written.
            return [];
        }
    }

    private static ImmutableArray<(string Number, LocalDate Day)> Named(string path)
    {
        var named = new Dictionary<string, LocalDate>(StringComparer.Ordinal);
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        using var lines = new StreamReader(file);
        for (var line = lines.ReadLine(); line is not null; line = lines.ReadLine())
        {
            if (line.Contains(Key, StringComparison.Ordinal))
            {
                Add(line, named);
            }
        }

        return [.. named.Select(one => (one.Key, one.Value))];
    }

    /// <summary>A line that was cut off, or is none, names nothing; whether the log is whole is another question.</summary>
    private static void Add(string line, Dictionary<string, LocalDate> named)
    {
        try
        {
            using var said = JsonDocument.Parse(line);
            if (NodaTime.Text.LocalDatePattern.Iso.Parse(said.RootElement.GetProperty("at").GetString()![..10]) is { Success: true } day)
            {
                foreach (var number in said.RootElement.GetProperty("sheets").EnumerateArray())
                {
                    named.TryAdd(number.GetString()!, day.Value);
                }
            }
        }
        catch (Exception exception) when (exception is JsonException or KeyNotFoundException or InvalidOperationException or ArgumentOutOfRangeException)
        {
        }
    }
}
