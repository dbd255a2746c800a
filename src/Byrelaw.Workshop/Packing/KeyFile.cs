namespace Byrelaw.Workshop.Packing;

/// <summary>Keys as people keep them: a text file of two lines.</summary>
public static class KeyFile
{
    private const string PrivateHead = "byrelaw private key 1: keep it to yourself";
    private const string PublicHead = "byrelaw public key 1: give it to those who check your packs";

    /// <summary>The text of a private key's file.</summary>
    public static string OfPrivate(byte[] key) => $"{PrivateHead}\n{Convert.ToBase64String(key)}\n";

    /// <summary>The text of a public key's file.</summary>
    public static string OfPublic(byte[] key) => $"{PublicHead}\n{Convert.ToBase64String(key)}\n";

    /// <summary>The private key in a text; null where it holds none.</summary>
    public static byte[]? ReadPrivate(string text) => Read(text, PrivateHead);

    /// <summary>The public key in a text; null where it holds none.</summary>
    public static byte[]? ReadPublic(string text) => Read(text, PublicHead);

    private static byte[]? Read(string text, string head)
    {
        ArgumentNullException.ThrowIfNull(text);
        var lines = text.TrimStart('\uFEFF').Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        var key = new byte[PackSigning.KeyLength + 1];
        return lines is [var first, var written] && first == head && Convert.TryFromBase64String(written, key, out var length) && length == PackSigning.KeyLength
            ? key[..PackSigning.KeyLength]
            : null;
    }
}
