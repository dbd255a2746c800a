namespace Byrelaw.Language.Rulebooks.RecordSources;

/// <summary>What a column of a source says: <c>serum copper in "Cu", in umol/L</c>.</summary>
/// <param name="What">Of what.</param>
/// <param name="Heading">The column's.</param>
/// <param name="Span">Where.</param>
public sealed record SourceColumn(SourceTarget What, string Heading, SourceSpan Span)
{
    /// <summary>The unit of its numbers, as written; null where cells say their own, or none is needed.</summary>
    public string? Unit { get; init; }

    /// <summary>What numbers are multiplied by.</summary>
    public double Times { get; init; } = 1;

    /// <summary>The heading of the column with the day of a result; null for none.</summary>
    public string? DatedIn { get; init; }

    /// <summary>The day of every result; null for none.</summary>
    public LocalDate? Dated { get; init; }

    /// <summary>The fact by which animals are found; null for the farm's own numbers.</summary>
    public Fact? FoundBy { get; init; }

    /// <summary>Whether animals are found by their numbers, zeros in front aside.</summary>
    public bool IsByNumber { get; init; }

    /// <summary>Whether animals are found by something else than their numbers as they stand there.</summary>
    public bool IsFoundBy => FoundBy is not null || IsByNumber;

    /// <summary>Whether it is the last of its kind: none came after it, up to the day of which the source is true.</summary>
    public bool IsLast { get; init; }

    /// <summary>Of a last entry: what a blank cell says; null for nothing.</summary>
    public BlankOfLast? Blank { get; init; }

    /// <summary>The day of which a parity is; null for the source's.</summary>
    public LocalDate? AsAt { get; init; }

    /// <summary>What texts of its cells mean; what is not among them is read as it stands.</summary>
    public ImmutableArray<CellMeaning> Cells { get; init; } = [];
}

/// <summary>What a blank cell says in a column of last entries: <c>blank is never</c>, <c>blank is none since last calving</c>.</summary>
/// <param name="SinceLast">The kind since whose last entry there was none; null where there never was one.</param>
public sealed record BlankOfLast(Kind? SinceLast);
