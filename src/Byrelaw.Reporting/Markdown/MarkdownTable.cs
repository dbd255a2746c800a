namespace Byrelaw.Reporting.Markdown;

/// <summary>A pipe table with a caption. Every row has as many cells as the heading.</summary>
/// <param name="caption">Plain words, shown in italics above the table; the HTML makes it the table's caption.</param>
/// <param name="headings">Plain words, one a column.</param>
public sealed class MarkdownTable(string caption, params string[] headings)
{
    private readonly List<string[]> _rows = [];

    /// <summary>Whether there is any row.</summary>
    public bool IsEmpty => _rows.Count == 0;

    /// <summary>Adds a row; each cell is Markdown already.</summary>
    public void Add(params string[] cells)
    {
        if (cells.Length != headings.Length)
        {
            throw new ArgumentException($"A row of {cells.Length} cells in a table of {headings.Length} columns.", nameof(cells));
        }

        _rows.Add(cells);
    }

    /// <inheritdoc/>
    public override string ToString()
    {
        var text = new StringBuilder();
        text.Append(MarkdownText.Italic(caption)).Append("\n\n");
        Row(text, headings.Select(MarkdownText.Of));
        Row(text, headings.Select(_ => "---"));
        foreach (var row in _rows)
        {
            Row(text, row);
        }

        return text.ToString();
    }

    private static void Row(StringBuilder text, IEnumerable<string> cells) =>
        text.Append("| ").AppendJoin(" | ", cells.Select(cell => cell.Length == 0 ? " " : cell)).Append(" |\n");
}
