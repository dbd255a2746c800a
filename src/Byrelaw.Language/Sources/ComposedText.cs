using ADRaffy.ENSNormalize;

namespace Byrelaw.Language.Sources;

/// <summary>
/// One spelling for letters with accents: an accent written as a sign of its own joins its letter (Unicode's form NFC, UAX 15).
/// </summary>
/// <remarks>
/// The program carries no language data of the system (<c>InvariantGlobalization</c>), and without it .NET's own
/// <see cref="string.Normalize()"/> leaves everything but ASCII as it is. The library that does it here reads its tables once, which
/// takes a fifth of a second: so it is asked only about texts in which there may be something to join.
/// </remarks>
internal static class ComposedText
{
    /// <summary>The text in the form NFC; the same object where nothing is to be joined.</summary>
    public static string Of(string text)
    {
        foreach (var c in text)
        {
            if (!IsWhole(c))
            {
                return IsWellFormed(text) ? ENSNormalize.NF.NFC(text) : text;
            }
        }

        return text;
    }

    /// <summary>
    /// Whether a sign stays as it is whatever stands beside it, so long as all of those are such signs: Latin letters, Cyrillic letters, dashes,
    /// quotation marks and other signs of print, signs of money, Chinese characters.
    /// </summary>
    private static bool IsWhole(char c) =>
        c < '\u0300' || c is (>= '\u0400' and <= '\u0482') or (>= '\u2010' and <= '\u205E') or (>= '\u20A0' and <= '\u20C0') or (>= '\u4E00' and <= '\u9FFF');

    /// <summary>Half a sign (a lone surrogate) has no composed form; the reader of files refuses it elsewhere.</summary>
    private static bool IsWellFormed(string text)
    {
        for (var at = 0; at < text.Length; at++)
        {
            if (char.IsSurrogate(text[at]) && !(char.IsHighSurrogate(text[at]) && at + 1 < text.Length && char.IsLowSurrogate(text[++at])))
            {
                return false;
            }
        }

        return true;
    }
}
