using System.Security.Cryptography;

namespace Byrelaw.Workshop.Packing;

/// <summary>
/// The lines that say what a pack is and holds: its head, and of each part the length and the SHA-256. It is what is signed, so a signature
/// covers every byte of the pack but itself. Anybody can draw it up again: it is the pack without the line that begins with
/// <c>signed</c>, without what the parts hold, without empty lines, and without the last line.
/// </summary>
internal static class PackManifest
{
    public const string FirstLine = "byrelaw pack 2";

    /// <summary>Its lines, each ended by LF.</summary>
    public static string Of(Pack pack) =>
        string.Concat(Head(pack).Concat(pack.Files.Select(FileLine)).Append(CanonicalLine(pack)).Select(line => line + "\n"));

    /// <summary>The lines above the signature.</summary>
    public static string[] Head(Pack pack) => [FirstLine, $"made with \"{pack.MadeWith}\"", $"{pack.Issue}", $"opens \"{pack.Opens}\"", $"rulebook {pack.Fingerprint}"];

    /// <summary>The line above a file.</summary>
    public static string FileLine(PackedFile file) => PartLine($"file \"{file.Path}\"", file.Bytes.AsSpan());

    /// <summary>The line above the canonical text.</summary>
    public static string CanonicalLine(Pack pack) => PartLine("canonical text", Encoding.UTF8.GetBytes(pack.Canonical));

    /// <summary>The SHA-256 of some bytes as packs write it.</summary>
    public static string Digest(ReadOnlySpan<byte> bytes) => "sha256:" + Convert.ToHexStringLower(SHA256.HashData(bytes));

    private static string PartLine(string name, ReadOnlySpan<byte> content) =>
        string.Create(CultureInfo.InvariantCulture, $"{name}, {content.Length} bytes, {Digest(content)}");
}
