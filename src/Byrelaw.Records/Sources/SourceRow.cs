namespace Byrelaw.Records.Sources;

/// <summary>A row of a source as it stands there.</summary>
/// <param name="Number">From 1, headings included.</param>
/// <param name="Cells">What its cells say, without blanks around them.</param>
/// <param name="Line">The whole row.</param>
internal readonly record struct SourceRow(int Number, string[] Cells, ReadOnlyMemory<char> Line)
{
    /// <summary>The whole row, for messages.</summary>
    public string Text => Line.ToString();

    /// <summary>What is wrong with how the row is written, so that its cells cannot be told apart; null for nothing.</summary>
    public string? Flaw { get; init; }

    /// <summary>Whether the file ends in it, without a line end: it may be cut anywhere.</summary>
    public bool IsCut { get; init; }

    /// <summary>Whether nothing stands in it.</summary>
    public bool IsBlank => Array.TrueForAll(Cells, cell => cell.Length == 0);

    /// <summary>What a cell says; empty for a column that is not there.</summary>
    public string this[int cell] => cell >= 0 && cell < Cells.Length ? Cells[cell] : "";
}
