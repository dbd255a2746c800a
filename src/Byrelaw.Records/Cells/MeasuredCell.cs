using System.Buffers;

namespace Byrelaw.Records.Cells;

/// <summary>How a measured value is bounded.</summary>
internal enum MeasureBound
{
    /// <summary>It is the value.</summary>
    Exact,

    /// <summary><c>&lt;3</c>: somewhere below.</summary>
    Below,

    /// <summary><c>&gt;10</c>: somewhere above.</summary>
    Above,
}

/// <summary>Reads a measured value: a number, perhaps with <c>&lt;</c> or <c>&gt;</c> before it, perhaps a unit after it.</summary>
internal static class MeasuredCell
{
    private static readonly SearchValues<byte> NumberBytes = SearchValues.Create("-.0123456789"u8);

    /// <summary>Takes the cell apart; false where there is no number at its start.</summary>
    public static bool TryRead(ReadOnlySpan<byte> cell, out MeasureBound bound, out double number, out ReadOnlySpan<byte> unit)
    {
        bound = cell.IsEmpty ? MeasureBound.Exact : cell[0] switch
        {
            (byte)'<' => MeasureBound.Below,
            (byte)'>' => MeasureBound.Above,
            _ => MeasureBound.Exact,
        };
        var rest = bound == MeasureBound.Exact ? cell : cell[1..].TrimStart((byte)' ');
        var end = rest.IndexOfAnyExcept(NumberBytes);
        unit = end < 0 ? [] : rest[end..].TrimStart((byte)' ');

        // "4,5" is no number with a unit after it: a unit starts with a letter, a micro or a degree sign.
        var unitCanBe = unit.IsEmpty || unit[0] >= 0x80 || char.IsAsciiLetter((char)unit[0]);
        return NumberCell.TryRead(end < 0 ? rest : rest[..end], out number) & unitCanBe;
    }

    /// <summary>The values allowed between two ends; low is above high where none is.</summary>
    public static AllowedRange Range(MeasureBound bound, double number, double lowest, double highest) => bound switch
    {
        MeasureBound.Below => new AllowedRange(lowest, double.BitDecrement(number)),
        MeasureBound.Above => new AllowedRange(double.BitIncrement(number), highest),
        _ => new AllowedRange(number, number),
    };
}
