namespace Byrelaw.Records.Cells;

/// <summary>A sample whose result is not there yet: the cell is blank, or says <c>pending</c>.</summary>
internal static class PendingCell
{
    /// <summary>Whether the result is not there yet.</summary>
    public static bool Is(ReadOnlySpan<byte> cell) =>
        cell.IsEmpty || (cell.Length == 7 && System.Text.Ascii.EqualsIgnoreCase(cell, "pending"u8));
}
