using System.Runtime.CompilerServices;
using System.Security.Cryptography;

namespace Byrelaw.Language.Canonical;

/// <summary>Tells two rulebooks apart.</summary>
public static class Fingerprint
{
    // One rulebook judges many herds, and its text is long.
    private static readonly ConditionalWeakTable<Rulebook, string> Known = [];

    /// <summary><c>sha256:</c> and the lower-case hexadecimal SHA-256 of <see cref="CanonicalText"/> in UTF-8.</summary>
    public static string Of(Rulebook rulebook) => Known.GetValue(rulebook, Digest);

    private static string Digest(Rulebook rulebook) =>
        "sha256:" + Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(CanonicalText.Of(rulebook))));
}
