namespace Byrelaw.Records.Sources;

/// <summary>A source that a farm names, opened.</summary>
/// <param name="Source">What the farm says of it.</param>
/// <param name="Shown">Its file, as messages name it.</param>
/// <param name="Read">What stands in it; null where it is not there, or no row of it can be read.</param>
internal sealed record OpenedSource(RecordSource Source, string Shown, TranslatedSource? Read)
{
    /// <summary>Lines whose column is not there, though the rows can be read.</summary>
    public ImmutableArray<SourceColumn> WithoutColumn { get; init; } = [];

    /// <summary>Headings of columns that no line reads or leaves out.</summary>
    public ImmutableArray<string> HeadingsNotRead { get; init; } = [];

    /// <summary>Headings of columns that no line reads, and whose cells tell of calves.</summary>
    public ImmutableArray<string> HeadingsThatTell { get; init; } = [];
}
