namespace Byrelaw.Records.Ledger;

/// <summary>
/// Which papers with boxes were written: one line a sheet, each with the hash of the line before, in the records' folder. It is the knowledge of what may have been done
/// and is not on record yet.
/// </summary>
public sealed class SheetLedger
{
    /// <summary>The file's name.</summary>
    public const string FileName = "sheets.jsonl";

    private readonly string? _lastHash;

    private SheetLedger(byte[] bytes, ImmutableArray<Sheet> sheets, bool isBroken, string? lastHash) => (Bytes, Sheets, IsBroken, _lastHash) = (bytes, sheets, isBroken, lastHash);

    /// <summary>As the file stands.</summary>
    public ReadOnlyMemory<byte> Bytes { get; }

    /// <summary>The sheets, in the order of writing, as far as the chain holds.</summary>
    public ImmutableArray<Sheet> Sheets { get; }

    /// <summary>Whether a line was changed, moved, taken out or is not whole.</summary>
    public bool IsBroken { get; }

    /// <summary>The day of the last line that holds; null for none.</summary>
    public LocalDate? LastGoodDay => Sheets.IsEmpty ? null : Sheets[^1].Written;

    /// <summary>The ledger of a folder of records; null where there is none.</summary>
    /// <exception cref="IOException">It cannot be read, or is a pipe.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public static SheetLedger? In(string folder) => Path.Combine(folder, FileName) is var path && RegularFile.Exists(path) ? Of(File.ReadAllBytes(path)) : null;

    /// <summary>Reads one, and follows its chain.</summary>
    public static SheetLedger Of(byte[] bytes)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        var sheets = ImmutableArray.CreateBuilder<Sheet>();
        string? before = null;
        for (var at = 0; at < bytes.Length;)
        {
            // A line without its end is one that was cut off.
            var end = Array.IndexOf(bytes, (byte)'\n', at);
            var line = bytes.AsMemory(at, (end < 0 ? bytes.Length : end) - at);
            line = line is { Length: > 0, Span: [.., (byte)'\r'] } ? line[..^1] : line;
            if (end < 0 || !SealedLine.Holds(line.Span) || SheetJson.Read(line) is not { } said || said.Number != sheets.Count + 1 || said.Before != before)
            {
                return new(bytes, sheets.ToImmutable(), isBroken: true, before);
            }

            before = SealedLine.HashOn(line.Span);
            sheets.Add(said.Sheet);
            at = end + 1;
        }

        return new(bytes, sheets.ToImmutable(), isBroken: false, before);
    }

    /// <summary>The same with one more line; the same sheet written again adds none.</summary>
    /// <exception cref="InvalidOperationException">The chain does not hold: nothing is added to it.</exception>
    public SheetLedger With(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        if (IsBroken)
        {
            throw new InvalidOperationException("a ledger whose chain does not hold is not added to");
        }

        return Sheets.Any(other => other.Number == sheet.Number) ? this
            : Of([.. Bytes.Span, .. Encoding.UTF8.GetBytes(SealedLine.Seal(SheetJson.Of(Sheets.Length + 1, _lastHash, sheet)).Line + "\n")]);
    }
}
