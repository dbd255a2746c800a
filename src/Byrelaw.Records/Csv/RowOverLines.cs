using System.Numerics;

namespace Byrelaw.Records.Csv;

/// <summary>Whether a row of which a quotation mark stays open on its line goes over several lines (RFC 4180, 2.6).</summary>
internal enum OverLines
{
    /// <summary>It does not: the mark is never closed, or what it closes is no row, or may hold other rows.</summary>
    No,

    /// <summary>What is there of the text does not tell.</summary>
    NotToldYet,

    /// <summary>It does.</summary>
    Yes,
}

/// <summary>
/// Finds the end of a row of which a cell in quotation marks goes over line ends. A mark that somebody typed and never closed would swallow rows up
/// to the next one, and nothing would say so; so a row goes over lines only where it has as many cells as the headings, and nothing in such a
/// cell may be a row. Every other one stays a row that falls apart, and puts in doubt whatever may have stood there.
/// </summary>
internal static class RowOverLines
{
    /// <summary>A remark is shorter; also what keeps a file of open marks quick to read.</summary>
    public const int Longest = 64 << 10;

    /// <summary>Looks at a row.</summary>
    /// <param name="text">From the start of the row on.</param>
    /// <param name="separator">What stands between cells.</param>
    /// <param name="cells">How many cells it must have; 0 for a row of headings, which may have any.</param>
    /// <param name="isToTheEnd">Whether the file ends where the text ends.</param>
    /// <param name="length">How long the row is, without its line end.</param>
    public static OverLines Of<T>(ReadOnlySpan<T> text, T separator, int cells, bool isToTheEnd, out int length)
        where T : unmanaged, IBinaryInteger<T>
    {
        var near = text.Length > Longest ? text[..Longest] : text;
        var open = near.Length < text.Length || isToTheEnd ? OverLines.No : OverLines.NotToldYet;
        var (quote, cr, lf) = (Sign<T>('"'), Sign<T>('\r'), Sign<T>('\n'));
        var (count, separators, isOver) = (1, 0, false);
        for (length = 0; ; length++, count++)
        {
            var rest = near[length..];
            var cell = !rest.IsEmpty && rest[0] == quote ? QuotedLength(rest) : PlainLength(rest, separator);
            if (cell < 0)
            {
                return open;
            }

            if (rest[..cell].ContainsAny(cr, lf))
            {
                isOver = true;
                separators += rest[..cell].Count(separator);
                if (MayHoldARow(rest[..cell], separator))
                {
                    return OverLines.No;
                }
            }

            length += cell;
            if (length == near.Length)
            {
                // A file that ends in such a row may be cut there.
                return open == OverLines.NotToldYet || near.Length < text.Length ? open : separators == 0 && IsRow() ? OverLines.Yes : OverLines.No;
            }

            if (near[length] != separator)
            {
                return (near[length] == cr || near[length] == lf) && IsRow() ? OverLines.Yes : OverLines.No;
            }
        }

        bool IsRow() => isOver && (cells == 0 ? separators == 0 : count == cells && separators < cells - 1);
    }

    private static T Sign<T>(char sign)
        where T : unmanaged, IBinaryInteger<T> => T.CreateTruncating(sign);

    private static int PlainLength<T>(ReadOnlySpan<T> text, T separator)
        where T : unmanaged, IBinaryInteger<T> => text.IndexOfAny([separator, Sign<T>('"'), Sign<T>('\r'), Sign<T>('\n')]) is >= 0 and var end ? end : text.Length;

    /// <summary>With both marks; -1 where the second one is not there.</summary>
    private static int QuotedLength<T>(ReadOnlySpan<T> text)
        where T : unmanaged, IBinaryInteger<T>
    {
        var quote = Sign<T>('"');
        for (var at = 1; at < text.Length; at += 2)
        {
            var next = text[at..].IndexOf(quote);
            if (next < 0)
            {
                return -1;
            }

            at += next;
            if (at + 1 == text.Length || text[at + 1] != quote)
            {
                return at + 1;
            }
        }

        return -1;
    }

    /// <summary>Whether a further line of a cell begins as a row does: with a number or a date, and a separator behind.</summary>
    private static bool MayHoldARow<T>(ReadOnlySpan<T> cell, T separator)
        where T : unmanaged, IBinaryInteger<T>
    {
        var (cr, lf) = (Sign<T>('\r'), Sign<T>('\n'));
        for (var at = cell.IndexOfAny(cr, lf); at >= 0; at = cell.IndexOfAny(cr, lf))
        {
            cell = cell[(at + 1)..];
            var end = cell.IndexOfAny(cr, lf);
            var line = (end < 0 ? cell : cell[..end]).TrimStart(Sign<T>(' '));
            if (!line.IsEmpty && line[0] >= Sign<T>('0') && line[0] <= Sign<T>('9') && line.Contains(separator))
            {
                return true;
            }
        }

        return false;
    }
}
