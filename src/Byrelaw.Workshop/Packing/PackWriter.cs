namespace Byrelaw.Workshop.Packing;

/// <summary>
/// Writes a pack as one text: a head, every file with its length and its SHA-256, the canonical text, and the SHA-256 of all that. Lengths, and
/// not marks around the files, say where one ends, so that nothing in a file has to be written otherwise.
/// </summary>
public static class PackWriter
{
    internal const string LastLine = "end of pack, ";

    /// <summary>The bytes of the pack.</summary>
    public static byte[] Write(Pack pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        using var bytes = new MemoryStream();
        foreach (var line in PackManifest.Head(pack))
        {
            Line(bytes, line);
        }

        if (pack.Signature is { } signature)
        {
            Line(bytes, $"signed ed25519 {Convert.ToBase64String(signature.PublicKey.AsSpan())} {Convert.ToBase64String(signature.Signature.AsSpan())}");
        }

        foreach (var file in pack.Files)
        {
            Section(bytes, PackManifest.FileLine(file), file.Bytes.AsSpan());
        }

        Section(bytes, PackManifest.CanonicalLine(pack), Encoding.UTF8.GetBytes(pack.Canonical));
        Line(bytes, LastLine + PackManifest.Digest(bytes.GetBuffer().AsSpan(0, (int)bytes.Length)));
        return bytes.ToArray();
    }

    private static void Section(MemoryStream bytes, string head, ReadOnlySpan<byte> content)
    {
        Line(bytes, "");
        Line(bytes, head);
        bytes.Write(content);
        Line(bytes, "");
    }

    private static void Line(MemoryStream bytes, string text) => bytes.Write(Encoding.UTF8.GetBytes(text + "\n"));
}
