namespace Byrelaw.Records.Cells;

/// <summary>Reads dates as records write them: <c>2026-10-19</c>; a birth also <c>2026-10</c> or <c>2026</c>.</summary>
internal static class DateCell
{
    /// <summary>A whole date.</summary>
    public static bool TryRead(ReadOnlySpan<byte> cell, out int day)
    {
        day = 0;
        if (cell.Length != 10 || cell[4] != '-' || cell[7] != '-'
            || !Digits(cell[..4], out var year) || !Digits(cell[5..7], out var month) || !Digits(cell[8..], out var dayOfMonth)
            || !CivilDate.Exists(year, month, dayOfMonth))
        {
            return false;
        }

        day = CivilDate.DayNumber(year, month, dayOfMonth);
        return true;
    }

    /// <summary>A date, a month or a year: its first and its last day.</summary>
    public static bool TryReadSpan(ReadOnlySpan<byte> cell, out int first, out int last)
    {
        (first, last) = (0, 0);
        switch (cell.Length)
        {
            case 10:
                var read = TryRead(cell, out first);
                last = first;
                return read;
            case 7 when cell[4] == '-' && Digits(cell[..4], out var year) && Digits(cell[5..], out var month) && CivilDate.Exists(year, month, 1):
                first = CivilDate.DayNumber(year, month, 1);
                last = CivilDate.DayNumber(year, month, DateTime.DaysInMonth(year, month));
                return true;
            case 4 when Digits(cell, out var year) && CivilDate.Exists(year, 1, 1):
                first = CivilDate.DayNumber(year, 1, 1);
                last = CivilDate.DayNumber(year, 12, 31);
                return true;
            default:
                return false;
        }
    }

    /// <summary>A day at the latest, <c>../2026-10-19</c> (ISO 8601-2): that day or an earlier one.</summary>
    public static bool TryReadUntil(ReadOnlySpan<byte> cell, out int last)
    {
        last = 0;
        return cell.StartsWith("../"u8) && TryRead(cell[3..], out last);
    }

    private static bool Digits(ReadOnlySpan<byte> text, out int number)
    {
        number = 0;
        foreach (var c in text)
        {
            if (!char.IsAsciiDigit((char)c))
            {
                return false;
            }

            number = (number * 10) + c - '0';
        }

        return true;
    }
}
