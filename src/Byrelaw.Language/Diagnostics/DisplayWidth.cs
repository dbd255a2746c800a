namespace Byrelaw.Language.Diagnostics;

/// <summary>How many columns of a terminal a text takes: marks none, Chinese, Japanese and Korean signs two.</summary>
internal static class DisplayWidth
{
    /// <summary>The width of a text without tabs and control characters.</summary>
    public static int Of(string text)
    {
        var width = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            width += Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark ? 0
                : IsWide(rune.Value) ? 2 : 1;
        }

        return width;
    }

    // From the blocks that Unicode's EastAsianWidth.txt marks W or F, near enough.
    private static bool IsWide(int c) => c is (>= 0x1100 and < 0x1160) or (>= 0x2E80 and < 0xA4D0) or (>= 0xAC00 and < 0xD7A4)
        or (>= 0xF900 and < 0xFB00) or (>= 0xFE30 and < 0xFE70) or (>= 0xFF00 and < 0xFF61) or (>= 0xFFE0 and < 0xFFE7)
        or (>= 0x1F300 and < 0x1F650) or (>= 0x1F900 and < 0x1FA00) or (>= 0x20000 and < 0x40000);
}
