using System.Buffers.Binary;
using System.Security.Cryptography;
using Byrelaw.Records.Embryos;

namespace Byrelaw.Records.Reading;

/// <summary>The fingerprint of a farm's records: taken over the bytes of the two files as they are read, each behind its length, and over what lies beside them.</summary>
internal static class RecordsDigest
{
    /// <summary>Begins a file: what is read of it follows.</summary>
    public static void Begin(IncrementalHash digest, RecordFile file)
    {
        Span<byte> bytes = stackalloc byte[sizeof(long)];
        BinaryPrimitives.WriteInt64LittleEndian(bytes, file.Length);
        digest.AppendData(bytes);
    }

    /// <summary>The fingerprint, once both files are read; of a farm with nothing beside them it is as it always was.</summary>
    public static string Of(IncrementalHash digest, RecordInput input)
    {
        var fingerprint = input.Fingerprint ?? "sha256:" + Convert.ToHexStringLower(digest.GetCurrentHash());
        foreach (var bytes in new[] { input.Ledger?.Bytes.ToArray(), BytesOf(input.Embryos), BytesOf(input.Pedigree) })
        {
            fingerprint = bytes is null ? fingerprint : "sha256:" + Convert.ToHexStringLower(SHA256.HashData([.. Encoding.UTF8.GetBytes(fingerprint + "\n"), .. bytes]));
        }

        return fingerprint;
    }

    private static byte[]? BytesOf(RecordFile? file)
    {
        if (file is null)
        {
            return null;
        }

        using var stream = file.Open();
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }
}
