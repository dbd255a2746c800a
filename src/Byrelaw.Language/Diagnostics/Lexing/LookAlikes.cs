namespace Byrelaw.Language.Diagnostics;

/// <summary>Letters of other scripts that look like Latin ones.</summary>
internal static class LookAlikes
{
    // From memory: the pairs that one cannot tell apart in most printed faces.
    private const string Others = "\u0430\u0435\u043E\u0440\u0441\u0443\u0445\u0456\u0458\u0455\u0410\u0412\u0415\u041A\u041C\u041D\u041E\u0420\u0421\u0422\u0425\u03BF\u03BD\u0391\u0392\u0395\u0397\u0399\u039A\u039C\u039D\u039F\u03A1\u03A4\u03A7";
    private const string Latin = "aeopcyxijsABEKMHOPCTXovABEHIKMNOPTX";

    /// <summary>The word with Latin letters wherever they look the same.</summary>
    public static string InLatin(string word) => string.Concat(word.Select(c => Others.IndexOf(c, StringComparison.Ordinal) is >= 0 and var at ? Latin[at] : c));
}
