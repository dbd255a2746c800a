using System.Buffers.Binary;
using System.IO.Compression;

namespace Byrelaw.Records.Sources;

/// <summary>
/// Unpacks a file packed by gzip (RFC 1952), and holds it to the sums that stand at its end: what .NET reads of one that breaks off
/// is shorter, and nothing says so.
/// </summary>
internal static class GzipFile
{
    private const int HeaderLength = 10;
    private const int SumsLength = 8;

    private static readonly uint[] Table = [.. Enumerable.Range(0, 256).Select(Entry)];

    /// <summary>Whether the bytes begin as such a file does.</summary>
    public static bool Is(ReadOnlySpan<byte> bytes) => bytes.StartsWith((ReadOnlySpan<byte>)[0x1F, 0x8B]);

    /// <summary>The bytes as they were before; null where they break off, are wrong, or are too many.</summary>
    /// <param name="bytes">Packed; several such files one behind the other are one.</param>
    /// <param name="most">The most bytes that are unpacked.</param>
    /// <param name="isTooLarge">Whether there are more.</param>
    public static byte[]? Unpacked(byte[] bytes, long most, out bool isTooLarge)
    {
        using var whole = new MemoryStream();
        isTooLarge = false;
        try
        {
            using var packed = new GZipStream(new MemoryStream(bytes, writable: false), CompressionMode.Decompress);
            if (!Copy(packed, whole, most))
            {
                isTooLarge = true;
                return null;
            }

            // Several files in one have their sums in several places, which only going through them one by one finds.
            return bytes.Length >= HeaderLength + SumsLength && HasSums(bytes.AsSpan(bytes.Length - SumsLength), whole) ? whole.ToArray() : OneByOne(bytes, most);
        }
        catch (InvalidDataException)
        {
            return null;
        }
    }

    private static byte[]? OneByOne(byte[] bytes, long most)
    {
        using var whole = new MemoryStream();
        var at = 0;
        while (at < bytes.Length && bytes.AsSpan(at).ContainsAnyExcept((byte)0))
        {
            if (!Is(bytes.AsSpan(at)) || EndOfHeader(bytes, at) is not { } start)
            {
                return null;
            }

            using var slow = new SlowStream(bytes, start);
            using var unpacked = new DeflateStream(slow, CompressionMode.Decompress);
            using var one = new MemoryStream();
            if (!Copy(unpacked, one, most - whole.Length) || slow.At + SumsLength > bytes.Length || !HasSums(bytes.AsSpan(slow.At, SumsLength), one))
            {
                return null;
            }

            one.WriteTo(whole);
            at = slow.At + SumsLength;
        }

        return whole.ToArray();
    }

    private static bool Copy(Stream from, MemoryStream to, long most)
    {
        var part = new byte[1 << 16];
        for (var read = from.Read(part); read > 0; read = from.Read(part))
        {
            if (to.Length + read > most)
            {
                return false;
            }

            to.Write(part, 0, read);
        }

        return true;
    }

    /// <summary>Where what is packed begins: behind ten bytes, and behind a note, a name, a remark and a sum where the flags say so.</summary>
    private static int? EndOfHeader(byte[] bytes, int at)
    {
        if (at + HeaderLength > bytes.Length)
        {
            return null;
        }

        var (flags, end) = (bytes[at + 3], at + HeaderLength);
        if ((flags & 4) != 0)
        {
            end = end + 2 > bytes.Length ? bytes.Length : end + 2 + BinaryPrimitives.ReadUInt16LittleEndian(bytes.AsSpan(end));
        }

        for (var text = 8; text <= 16; text *= 2)
        {
            if ((flags & text) != 0 && end < bytes.Length)
            {
                var zero = bytes.AsSpan(end).IndexOf((byte)0);
                end = zero < 0 ? bytes.Length : end + zero + 1;
            }
        }

        end += (flags & 2) != 0 ? 2 : 0;
        return end < bytes.Length ? end : null;
    }

    private static bool HasSums(ReadOnlySpan<byte> sums, MemoryStream unpacked) =>
        BinaryPrimitives.ReadUInt32LittleEndian(sums[4..]) == (uint)unpacked.Length && BinaryPrimitives.ReadUInt32LittleEndian(sums) == SumOf(unpacked.GetBuffer().AsSpan(0, (int)unpacked.Length));

    /// <summary>CRC-32 (RFC 1952, 8).</summary>
    private static uint SumOf(ReadOnlySpan<byte> bytes)
    {
        var sum = uint.MaxValue;
        foreach (var one in bytes)
        {
            sum = Table[(sum ^ one) & 0xFF] ^ (sum >> 8);
        }

        return ~sum;
    }

    private static uint Entry(int number)
    {
        var entry = (uint)number;
        for (var bit = 0; bit < 8; bit++)
        {
            entry = (entry & 1) != 0 ? 0xEDB88320 ^ (entry >> 1) : entry >> 1;
        }

        return entry;
    }

    /// <summary>Gives one byte at a time, so that nothing is read beyond the end of what is packed.</summary>
    private sealed class SlowStream(byte[] bytes, int start) : Stream
    {
        public int At { get; private set; } = start;

        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position { get => throw new NotSupportedException(); set => throw new NotSupportedException(); }

        public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

        public override int Read(Span<byte> buffer)
        {
            if (buffer.IsEmpty || At >= bytes.Length)
            {
                return 0;
            }

            buffer[0] = bytes[At++];
            return 1;
        }

        public override void Flush()
        {
        }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
