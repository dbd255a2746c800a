using System.Text.RegularExpressions;

namespace Byrelaw.Records.Spellings;

/// <summary>What two numbers, or two names of mobs, have in common if a hand wrote one for the other: leading zeros, spaces, width, case and signs that nobody sees make no difference.</summary>
internal static partial class AlikeText
{
    private const int FirstWide = 0xFF01;
    private const int LastWide = 0xFF5E;

    /// <summary>The farm's own number, so written.</summary>
    public static string OfNumber(string text) => WithoutPadding().Replace(Of(text, isIdentity: false), "");

    /// <summary>What a sheet or a pen adds to a number: zeros before digits (<c>A07</c>), a dash between letter and digit (<c>A-7</c>), and the tenths of a number that is none (<c>112.0</c>).</summary>
    [GeneratedRegex(@"(?<=[^\d.])-?0*(?=\d)|[.]0+$")]
    private static partial Regex WithoutPadding();

    /// <summary>An official identity, so written; there dashes make no difference either.</summary>
    public static string OfIdentity(string text) => Of(text, isIdentity: true);

    /// <summary>The name of a mob, so written; dashes make no difference, and a letter of another script none from the Latin one that it looks like.</summary>
    public static string OfMob(string text) => string.Concat(Of(text, isIdentity: true).Select(Latin));

    /// <summary>The name of a herd, so written: capitals, width, spaces at its ends, and signs that nobody sees make no difference.</summary>
    public static string OfHerd(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.Format or UnicodeCategory.Control or UnicodeCategory.OtherNotAssigned))
            {
                plain.Append((rune.Value is >= FirstWide and <= LastWide ? new Rune(rune.Value - FirstWide + '!') : rune).ToString());
            }
        }

        return NameFolding.Fold(plain.ToString().Trim());
    }

    /// <summary>Cyrillic and Greek capitals that look like Latin ones: `Нill` for `Hill`.</summary>
    private static char Latin(char letter)
    {
        const string Others = "АВЕЅІЈКМНОРСТУХΑΒΕΖΗΙΚΜΝΟΡΤΥΧ";
        const string Same = "ABESIJKMHOPCTYXABEZHIKMNOPTYX";
        var place = Others.IndexOf(letter, StringComparison.Ordinal);
        return place < 0 ? letter : Same[place];
    }

    private static string Of(string text, bool isIdentity)
    {
        var alike = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            var category = Rune.GetUnicodeCategory(rune);
            var isSeen = !Rune.IsWhiteSpace(rune) && category is not (UnicodeCategory.Format or UnicodeCategory.Control or UnicodeCategory.OtherNotAssigned);
            if (isSeen && !(isIdentity && category == UnicodeCategory.DashPunctuation))
            {
                alike.Append(Plain(rune, category).ToString());
            }
        }

        var seen = alike.ToString();
        var digits = seen.TrimStart('0');
        return digits.Length == 0 && seen.Length > 0 ? "0" : digits;
    }

    /// <summary>A digit of any script as 0 to 9, a wide sign as a narrow one, a letter as a capital. The program brings no tables of other likenesses along.</summary>
    private static Rune Plain(Rune rune, UnicodeCategory category) =>
        category == UnicodeCategory.DecimalDigitNumber ? new Rune('0' + (int)Rune.GetNumericValue(rune))
        : rune.Value is >= FirstWide and <= LastWide ? Rune.ToUpperInvariant(new Rune(rune.Value - FirstWide + '!'))
        : Rune.ToUpperInvariant(rune);
}
