namespace Byrelaw.Reporting.Log;

/// <summary>A log that was read and held to its hashes.</summary>
/// <param name="Entries">The lines that are as they were written, in the order of the file.</param>
/// <param name="LastHash">The hash of the last of them; null for none.</param>
/// <param name="Problems">Where the chain is broken.</param>
public sealed record LogCheck(ImmutableArray<LogEntry> Entries, string? LastHash, ImmutableArray<Diagnostic> Problems)
{
    /// <summary>Checks the bytes of a log.</summary>
    /// <param name="bytes">All of the file.</param>
    /// <param name="shown">The file as shown.</param>
    /// <param name="kept">A hash that was noted elsewhere, with or without <c>sha256:</c>, which must be on a line; null for none.</param>
    public static LogCheck Of(ReadOnlySpan<byte> bytes, string shown, string? kept = null)
    {
        var lines = LogLine.Read(bytes);
        var problems = LogChain.Check(lines, new LogProblems(shown));
        var whole = lines.Where(line => line.Entry is not null).ToList();
        if (kept is not null && !whole.Exists(line => line.Hash == kept || line.Hash == $"sha256:{kept}"))
        {
            problems = problems.Add(new LogProblems(shown).NotThere(kept, lines.LastOrDefault()));
        }

        return new LogCheck([.. whole.Select(line => line.Entry!)], whole.LastOrDefault()?.Hash, problems);
    }
}
