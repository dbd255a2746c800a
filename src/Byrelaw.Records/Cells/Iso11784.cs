namespace Byrelaw.Records.Cells;

/// <summary>What is wrong with an official number of 15 digits.</summary>
internal enum IdentityFlaw
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>It starts with 999, the code for tests.</summary>
    TestCode,

    /// <summary>It starts with 000, which is no code.</summary>
    NoCode,

    /// <summary>The last 12 digits are more than the standard has room for.</summary>
    TooLarge,
}

/// <summary>
/// Holds official numbers of 15 digits to ISO 11784: three digits for the country or the
/// manufacturer, twelve for the animal.
/// </summary>
/// <remarks>
/// Source: ISO 11784, code structure: the animal's number has 38 bits (27 to 64) and the country or
/// manufacturer 10 bits (17 to 26), as ICAR, its registration authority, presents it; ICAR lists
/// tags coded 999 (kept for tests) and 000 as misuse.
/// </remarks>
internal static class Iso11784
{
    /// <summary>The largest number of an animal: 2^38 - 1.</summary>
    public const long LargestNumber = (1L << 38) - 1;

    private const int Length = 15;
    private const int CodeLength = 3;

    /// <summary>Whether the standard speaks about such a text.</summary>
    public static bool Concerns(string text) => text.Length == Length && text.All(char.IsAsciiDigit);

    /// <summary>What is wrong with a text that the standard speaks about.</summary>
    public static IdentityFlaw Flaw(string text) => text[..CodeLength] switch
    {
        "999" => IdentityFlaw.TestCode,
        "000" => IdentityFlaw.NoCode,
        _ when long.Parse(text.AsSpan(CodeLength), CultureInfo.InvariantCulture) > LargestNumber => IdentityFlaw.TooLarge,
        _ => IdentityFlaw.None,
    };
}
