namespace Byrelaw.Records.Cells;

/// <summary>What people write where they do not know a name, as of a mob or a sire: no name, whatever it says.</summary>
internal static class NotKnownCell
{
    private static readonly string[] Words = ["pending", "unknown", "not known", "n/a", "na", "tbc"];

    /// <summary>Whether it names nothing though something stands there: a word for not knowing, a question mark, dashes or dots alone.</summary>
    public static bool Is(ReadOnlySpan<byte> cell)
    {
        if (cell.IsEmpty)
        {
            return false;
        }

        if (cell.Contains((byte)'?') || cell.Trim("-.–— "u8).IsEmpty)
        {
            return true;
        }

        foreach (var word in Words)
        {
            if (Ascii.EqualsIgnoreCase(cell, word))
            {
                return true;
            }
        }

        return false;
    }
}
