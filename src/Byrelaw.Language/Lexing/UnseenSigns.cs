namespace Byrelaw.Language.Lexing;

/// <summary>
/// Signs that nobody sees and that change what everybody sees: control characters, and marks that turn the direction of writing, by which a line can
/// be made to read otherwise than it is. They stand nowhere in a rule file. Source of the marks: Unicode Standard Annex 9, section 2; of the
/// danger: Unicode Technical Standard 55, "Source Code Handling".
/// </summary>
internal static class UnseenSigns
{
    /// <summary>Where the first one is; -1 for none.</summary>
    public static int First(ReadOnlySpan<char> text)
    {
        for (var at = 0; at < text.Length; at++)
        {
            if (IsOne(text[at]))
            {
                return at;
            }
        }

        return -1;
    }

    /// <summary>Whether a sign is one; a tab is not.</summary>
    public static bool IsOne(char sign) => (char.IsControl(sign) && sign != '\t') || TurnsDirection(sign);

    /// <summary>Whether a sign turns the direction of writing.</summary>
    public static bool TurnsDirection(char sign) =>
        sign is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069') or '\u200E' or '\u200F' or '\u061C' or '\uFEFF' or '\u2028' or '\u2029';
}
