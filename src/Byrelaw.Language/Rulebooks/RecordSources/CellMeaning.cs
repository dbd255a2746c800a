namespace Byrelaw.Language.Rulebooks.RecordSources;

/// <summary>What a text of a column means: <c>- "CU" is serum copper, value in "Detail", in umol/L</c>.</summary>
/// <param name="Cell">The whole cell, as written.</param>
/// <param name="Where">What another column must say; null for nothing.</param>
/// <param name="Is">What it means.</param>
/// <param name="Span">Where.</param>
public sealed record CellMeaning(string Cell, CellSaid? Where, CellIs Is, SourceSpan Span)
{
    /// <summary>The unit of its numbers, as written; null for the column's.</summary>
    public string? Unit { get; init; }

    /// <summary>What numbers are multiplied by.</summary>
    public double Times { get; init; } = 1;

    /// <summary>What more of the row is said.</summary>
    public ImmutableArray<CellPart> Parts { get; init; } = [];
}

/// <summary>What a text means.</summary>
public abstract record CellIs;

/// <summary>Nothing: as a blank cell.</summary>
public sealed record IsBlank : CellIs;

/// <summary>A result that is not in yet.</summary>
public sealed record IsPending : CellIs;

/// <summary>Something that the farm leaves out.</summary>
public sealed record IsLeftOut : CellIs;

/// <summary>A kind of record.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Answer">Of a test: its answer; null for none.</param>
public sealed record IsKind(Kind Kind, string? Answer) : CellIs;

/// <summary>A value, in the spelling of the landed files.</summary>
/// <param name="Text">Which.</param>
public sealed record IsValue(string Text) : CellIs;

/// <summary>Below or above what the laboratory can tell.</summary>
/// <param name="IsLess">Whether it is below.</param>
/// <param name="Limit">Of what.</param>
public sealed record IsLimit(bool IsLess, double Limit) : CellIs;

/// <summary>More that a text says of its row.</summary>
/// <param name="What">The value or a detail.</param>
/// <param name="Heading">The column it stands in; null where it is said here.</param>
/// <param name="Value">What it is; null where it stands in a column.</param>
public sealed record CellPart(SourceTarget What, string? Heading, string? Value);
