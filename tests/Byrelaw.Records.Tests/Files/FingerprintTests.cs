using System.Buffers.Binary;
using System.Security.Cryptography;

namespace Byrelaw.Records.Tests.Files;

public class FingerprintTests
{
    private const string Events = "\uFEFFdate,animal,kind\r\n2026-03-01,1001,heat\r\n";

    [Theory]
    [InlineData(Read.Animals + "\n", Events)]
    [InlineData(Read.Animals + "\n", "")]
    [InlineData("", Events)]
    [InlineData(Read.Animals + "\n", "when\n2026-03-01\n")]
    public void It_is_the_digest_of_both_files_each_after_its_length(string animals, string events)
    {
        byte[] all = [.. Length(animals), .. Read.Bytes(animals), .. Length(events), .. Read.Bytes(events)];

        Read.Herd(events, animals).Fingerprint.ShouldBe("sha256:" + Convert.ToHexStringLower(SHA256.HashData(all)));
    }

    private static byte[] Length(string text)
    {
        var bytes = new byte[8];
        BinaryPrimitives.WriteInt64LittleEndian(bytes, Read.Bytes(text).Length);
        return bytes;
    }
}
