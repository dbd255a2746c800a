using System.Security.Cryptography;

namespace Byrelaw.Workshop.Packing;

/// <summary>
/// Writes a pack as one text: a head, every file with its length and its SHA-256, the canonical text, and the SHA-256 of all that. Lengths, and
/// not marks around the files, say where one ends, so that nothing in a file has to be written otherwise.
/// </summary>
public static class PackWriter
{
    internal const string FirstLine = "byrelaw pack 1";
    internal const string LastLine = "end of pack, ";

    /// <summary>The bytes of the pack.</summary>
    public static byte[] Write(Pack pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        using var bytes = new MemoryStream();
        Line(bytes, FirstLine);
        Line(bytes, $"made with \"{pack.MadeWith}\"");
        Line(bytes, $"opens \"{pack.Opens}\"");
        Line(bytes, $"rulebook {pack.Fingerprint}");
        if (pack.Signature is { } signature)
        {
            Line(bytes, $"signed ed25519 {Convert.ToBase64String(signature.PublicKey.AsSpan())} {Convert.ToBase64String(signature.Signature.AsSpan())}");
        }

        foreach (var file in pack.Files)
        {
            Section(bytes, $"file \"{file.Path}\"", file.Bytes.AsSpan());
        }

        Section(bytes, "canonical text", Encoding.UTF8.GetBytes(pack.Canonical));
        Line(bytes, LastLine + Digest(bytes.GetBuffer().AsSpan(0, (int)bytes.Length)));
        return bytes.ToArray();
    }

    /// <summary>The SHA-256 of some bytes as packs write it.</summary>
    internal static string Digest(ReadOnlySpan<byte> bytes) => "sha256:" + Convert.ToHexStringLower(SHA256.HashData(bytes));

    private static void Section(MemoryStream bytes, string head, ReadOnlySpan<byte> content)
    {
        Line(bytes, "");
        Line(bytes, $"{head}, {content.Length} bytes, {Digest(content)}");
        bytes.Write(content);
        Line(bytes, "");
    }

    private static void Line(MemoryStream bytes, string text) => bytes.Write(Encoding.UTF8.GetBytes(text + "\n"));
}
