using System.IO.Compression;

namespace Byrelaw.Records.Workbooks;

/// <summary>
/// Reads every part of a workbook before anything looks into it, and counts the bytes as they come: what a file says of its own sizes means
/// nothing. A small file can unpack into more than any machine holds.
/// </summary>
/// <param name="MostParts">How many parts there may be.</param>
/// <param name="MostOfAPart">The most bytes of one.</param>
/// <param name="MostInAll">The most bytes of all together.</param>
/// <param name="MostBetweenTags">The most bytes between two tags.</param>
internal sealed record WorkbookBounds(int MostParts, long MostOfAPart, long MostInAll, int MostBetweenTags)
{
    /// <summary>More than any herd's sheet needs.</summary>
    public static readonly WorkbookBounds Usual = new(1000, 512L << 20, 1L << 30, 1 << 20);

    /// <summary>Why a workbook is not read; null where it keeps within the bounds.</summary>
    /// <exception cref="InvalidDataException">It is packed wrongly, or breaks off.</exception>
    public string? Exceeded(ZipArchive workbook)
    {
        if (workbook.Entries.Count > MostParts)
        {
            return $"it has more than {MostParts} parts";
        }

        if (workbook.Entries.DistinctBy(part => part.FullName, StringComparer.OrdinalIgnoreCase).Count() < workbook.Entries.Count)
        {
            // What is counted here and what is read later might be two things.
            throw new InvalidDataException("two parts of one name");
        }

        var all = 0L;
        var block = new byte[1 << 16];
        foreach (var part in workbook.Entries)
        {
            using var stream = part.Open();
            var (size, since) = (0L, 0L);
            for (var read = stream.Read(block); read > 0; read = stream.Read(block))
            {
                size += read;
                all += read;
                since = Since(block.AsSpan(0, read), since, out var longest);
                if (size > MostOfAPart || all > MostInAll)
                {
                    return $"unpacked it is larger than {(size > MostOfAPart ? MostOfAPart : MostInAll) >> 20} MB";
                }

                if (longest > MostBetweenTags && IsMarkup(part.FullName))
                {
                    return $"a cell or a tag in it is longer than {MostBetweenTags >> 20} MB";
                }
            }
        }

        return null;
    }

    /// <summary>How far behind the last tag's end or start the block ends, and the longest stretch without one.</summary>
    private static long Since(ReadOnlySpan<byte> block, long since, out long longest)
    {
        longest = since;
        while (!block.IsEmpty)
        {
            var tag = block.IndexOfAny((byte)'<', (byte)'>');
            if (tag < 0)
            {
                since += block.Length;
                longest = Math.Max(longest, since);
                break;
            }

            longest = Math.Max(longest, since + tag);
            since = 0;
            block = block[(tag + 1)..];
        }

        return since;
    }

    private static bool IsMarkup(string name) => name.EndsWith(".xml", StringComparison.OrdinalIgnoreCase) || name.EndsWith(".rels", StringComparison.OrdinalIgnoreCase);
}
