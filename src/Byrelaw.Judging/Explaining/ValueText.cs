using System.Globalization;
using NodaTime.Text;

namespace Byrelaw.Judging.Explaining;

/// <summary>Writes values as rule files and records do: no trailing zeros, ISO dates, the unit after the number.</summary>
internal static class ValueText
{
    public static string Write(double value, string? unit = null)
    {
        var number = value.ToString("0.#########", CultureInfo.InvariantCulture);
        return unit is null ? number : $"{number} {unit}";
    }

    public static string WriteDay(int day) => LocalDatePattern.Iso.Format(Day.Date(day));

    /// <summary>A result that may allow several values; null where it allows any.</summary>
    public static string? WriteResult(double low, double high, string? unit)
    {
        if (low == high)
        {
            return Write(low, unit);
        }

        // Vague results are kept as the numbers just inside their limits: see KindRun.
        var isBelow = Write(high, null) is var top && double.IsFinite(high) && Math.BitIncrement(high) == double.Parse(top, CultureInfo.InvariantCulture);
        if (isBelow)
        {
            return "<" + Write(Math.BitIncrement(high), unit);
        }

        return double.IsFinite(low) ? ">" + Write(Math.BitDecrement(low), unit) : null;
    }
}
