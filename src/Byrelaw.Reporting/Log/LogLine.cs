namespace Byrelaw.Reporting.Log;

/// <summary>
/// One line of a log file, sealed (<see cref="SealedLine"/>); since the hash of the line before stands in it, each line vouches for all above it.
/// </summary>
internal sealed record LogLine
{
    private static ReadOnlySpan<byte> ByteOrderMark => [0xEF, 0xBB, 0xBF];

    /// <summary>Its line in the file, from 1.</summary>
    public required int Place { get; init; }

    /// <summary>As it stands there; bytes that are no UTF-8 as replacement signs.</summary>
    public required string Text { get; init; }

    /// <summary>Whether a line end follows.</summary>
    public required bool IsEnded { get; init; }

    /// <summary>Whether it ends with a hash, right or not.</summary>
    public bool HasHash { get; init; }

    /// <summary>The hash that stands on it.</summary>
    public string Hash { get; init; } = "";

    /// <summary>What it says; null unless its hash is right.</summary>
    public LogEntry? Entry { get; init; }

    /// <summary>All lines of a file.</summary>
    public static ImmutableArray<LogLine> Read(ReadOnlySpan<byte> bytes)
    {
        var lines = ImmutableArray.CreateBuilder<LogLine>();
        bytes = bytes.StartsWith(ByteOrderMark) ? bytes[ByteOrderMark.Length..] : bytes;
        while (!bytes.IsEmpty)
        {
            // Tools that keep versions of files, and editors, may turn every line end into CRLF: that changes no word of the log.
            var end = bytes.IndexOf((byte)'\n');
            var line = end < 0 ? bytes : bytes[..end];
            lines.Add(Read(line is [.. var words, (byte)'\r'] ? words : line, lines.Count + 1, isEnded: end >= 0));
            bytes = end < 0 ? [] : bytes[(end + 1)..];
        }

        return lines.ToImmutable();
    }

    /// <summary>An entry as a line, without a line end, and its hash.</summary>
    public static (string Line, string Hash) Seal(LogEntry entry) => SealedLine.Seal(JsonSerializer.Serialize(entry, JsonShapes.OneLine.LogEntry));

    /// <summary>Whether it may be what a crash left of the line with a number.</summary>
    public bool MayBeStartOf(int number)
    {
        var start = string.Create(CultureInfo.InvariantCulture, $"{{\"number\":{number},");
        return Text.Length > 0 && (Text.StartsWith(start, StringComparison.Ordinal) || start.StartsWith(Text, StringComparison.Ordinal));
    }

    private static LogLine Read(ReadOnlySpan<byte> bytes, int place, bool isEnded)
    {
        var line = new LogLine { Place = place, Text = Encoding.UTF8.GetString(bytes), IsEnded = isEnded };
        return SealedLine.HashOn(bytes) is not { } hash ? line : line with { HasHash = true, Hash = hash, Entry = SealedLine.Holds(bytes) ? EntryOf(bytes) : null };
    }

    private static LogEntry? EntryOf(ReadOnlySpan<byte> bytes)
    {
        try
        {
            return JsonSerializer.Deserialize(bytes, JsonShapes.OneLine.LogEntry) is { Number: > 0 } entry ? entry : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
