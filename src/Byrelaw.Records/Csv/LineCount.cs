using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Byrelaw.Records.Csv;

/// <summary>Counts line ends: LF, CRLF, or a CR on its own (old files have them, and the reader of rows ends a row there).</summary>
internal static class LineCount
{
    private const byte Lf = (byte)'\n';
    private const byte Cr = (byte)'\r';

    /// <summary>How many lines end in these bytes. The byte after a last CR must be among them.</summary>
    public static int Of(ReadOnlySpan<byte> bytes) => bytes.Count(Lf) + LoneCr(bytes);

    private static int LoneCr(ReadOnlySpan<byte> bytes)
    {
        var count = 0;
        var i = 0;
        ref var first = ref MemoryMarshal.GetReference(bytes);
        for (; i + Vector256<byte>.Count < bytes.Length; i += Vector256<byte>.Count)
        {
            var isCr = Vector256.Equals(Vector256.LoadUnsafe(ref Unsafe.Add(ref first, i)), Vector256.Create(Cr));
            if (isCr != Vector256<byte>.Zero)
            {
                var thenLf = Vector256.Equals(Vector256.LoadUnsafe(ref Unsafe.Add(ref first, i + 1)), Vector256.Create(Lf));
                count += System.Numerics.BitOperations.PopCount(Vector256.AndNot(isCr, thenLf).ExtractMostSignificantBits());
            }
        }

        for (; i < bytes.Length; i++)
        {
            if (bytes[i] == Cr && (i + 1 == bytes.Length || bytes[i + 1] != Lf))
            {
                count++;
            }
        }

        return count;
    }
}
