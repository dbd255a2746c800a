using System.Buffers.Text;

namespace Byrelaw.Records.Cells;

/// <summary>Reads plain numbers: digits, perhaps a minus before them, perhaps a point among them.</summary>
internal static class NumberCell
{
    // Whole numbers up to 2^53 and powers of ten up to 10^22 are exact in a double, so one division is rounded right.
    private const int ExactDigits = 15;

    private static readonly double[] Powers = [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15];

    /// <summary>The whole cell is one number.</summary>
    public static bool TryRead(ReadOnlySpan<byte> cell, out double number)
    {
        number = 0;
        var isNegative = !cell.IsEmpty && cell[0] == '-';
        var digits = isNegative ? cell[1..] : cell;
        var point = -1;
        long whole = 0;
        for (var i = 0; i < digits.Length; i++)
        {
            if (digits[i] == '.' && point < 0)
            {
                point = i;
            }
            else if (!char.IsAsciiDigit((char)digits[i]))
            {
                return false;
            }
            else if (i <= ExactDigits)
            {
                whole = (whole * 10) + digits[i] - '0';
            }
        }

        if (digits.IsEmpty || point == 0 || point == digits.Length - 1)
        {
            return false;
        }

        if (digits.Length <= ExactDigits)
        {
            var size = point < 0 ? whole : whole / Powers[digits.Length - 1 - point];
            number = isNegative && whole != 0 ? -size : size;
            return true;
        }

        return Utf8Parser.TryParse(cell, out number, out var used) && used == cell.Length && double.IsFinite(number);
    }
}
