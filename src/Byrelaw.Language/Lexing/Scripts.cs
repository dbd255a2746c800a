namespace Byrelaw.Language.Lexing;

/// <summary>
/// Tells the scripts of letters apart, coarsely: a word whose letters come from two of them looks
/// like another word and is none. Chinese, Japanese and Korean signs, which are written together, count as one.
/// </summary>
internal static class Scripts
{
    private const int Any = 0;

    /// <summary>Whether all letters of a word are of one script. The micro sign goes with every script.</summary>
    public static bool IsOne(string word)
    {
        var seen = Any;
        foreach (var rune in word.EnumerateRunes())
        {
            var script = Rune.IsLetter(rune) ? Of(rune.Value) : Any;
            if (script != Any && seen != Any && script != seen)
            {
                return false;
            }

            seen = script == Any ? seen : script;
        }

        return true;
    }

    private static int Of(int c) => c switch
    {
        0xB5 or 0x3BC or 0x2BC => Any,
        < 0x370 or (>= 0x1D00 and < 0x1DC0) or (>= 0x1E00 and < 0x1F00) or (>= 0x2C60 and < 0x2C80) or (>= 0xA720 and < 0xA800)
            or (>= 0xAB30 and < 0xAB70) or (>= 0xFB00 and < 0xFB07) or (>= 0xFF00 and < 0xFF60) => 1,
        < 0x400 or (>= 0x1F00 and < 0x2000) => 2,
        < 0x530 or (>= 0x1C80 and < 0x1C90) or (>= 0x2DE0 and < 0x2E00) or (>= 0xA640 and < 0xA6A0) => 3,
        (>= 0x600 and < 0x700) or (>= 0x750 and < 0x780) or (>= 0x8A0 and < 0x900) or (>= 0xFB50 and < 0xFF00) => 4,
        (>= 0x1100 and < 0x1200) or (>= 0x2E80 and < 0xA4D0) or (>= 0xA960 and < 0xA980) or (>= 0xAC00 and < 0xD800)
            or (>= 0xF900 and < 0xFB00) or (>= 0xFF60 and < 0xFFF0) or (>= 0x20000 and < 0x40000) => 5,
        // Every other script has blocks of 128 signs of its own, near enough.
        _ => 6 + (c >> 7),
    };
}
