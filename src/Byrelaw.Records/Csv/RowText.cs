using System.Text.Unicode;

namespace Byrelaw.Records.Csv;

/// <summary>One line of a file as text, made only when there is something to say about it.</summary>
internal sealed class RowText
{
    private RowText(string file, int line, string text, List<Cell> cells)
    {
        File = file;
        Line = line;
        Text = text;
        Cells = cells;
    }

    /// <summary>Whether it is the last of its file and has no line end, though lines before it have one: it may be cut anywhere.</summary>
    public bool IsLastWithoutEnd { get; init; }

    /// <summary>The file as shown.</summary>
    public string File { get; }

    /// <summary>From 1.</summary>
    public int Line { get; }

    /// <summary>The line without its end; bytes that are not UTF-8 as replacement characters.</summary>
    public string Text { get; }

    /// <summary>The cells, up to and with the first one that is badly quoted.</summary>
    public IReadOnlyList<Cell> Cells { get; }

    /// <summary>Reads a line's bytes.</summary>
    public static RowText Of(string file, int line, ReadOnlySpan<byte> bytes, bool isLastWithoutEnd = false)
    {
        bytes = bytes.TrimEnd("\r\n"u8);
        var text = Encoding.UTF8.GetString(bytes);
        var cells = CellSplitter.Split(text);
        if (!Utf8.IsValid(bytes))
        {
            MarkCells(cells, '\uFFFD', text, CellFlaw.NotUtf8);
        }

        if (text.Contains('\0', StringComparison.Ordinal))
        {
            MarkCells(cells, '\0', text, CellFlaw.Nul);
        }

        return new RowText(file, line, text, cells) { IsLastWithoutEnd = isLastWithoutEnd };
    }

    /// <summary>What a cell says, where it can be read; null where it is flawed, or the line has no such cell.</summary>
    public string? Saved(int cell) =>
        cell >= 0 && cell < Cells.Count && Cells[cell].Flaw == CellFlaw.None ? Cells[cell].Value : null;

    /// <summary>A problem with one cell; a cell past the end stands at the end of the line.</summary>
    public Diagnostic Problem(int cell, string code, Severity severity, string found, string? expected = null, string? help = null)
    {
        var (start, length) = cell < Cells.Count ? (Cells[cell].Start, Cells[cell].Length) : (Text.Length, 1);
        return new Diagnostic(code, severity, File, Line, start + 1, Math.Max(1, length), found, expected, help, Text);
    }

    private static void MarkCells(List<Cell> cells, char bad, string text, CellFlaw flaw)
    {
        for (var i = 0; i < cells.Count; i++)
        {
            if (cells[i].Flaw == CellFlaw.None && text.AsSpan(cells[i].Start, cells[i].Length).Contains(bad))
            {
                cells[i] = cells[i] with { Flaw = flaw };
            }
        }
    }
}
