namespace Byrelaw.Judging.Tuning;

/// <summary>Picks from a range a value that a person would write.</summary>
internal static class PlainValue
{
    private const int Decimals = 6;

    /// <summary>Of the values with the fewest decimals the nearest to another value.</summary>
    public static decimal In(ValueRange range, decimal near)
    {
        if (range.Holds(near))
        {
            return near;
        }

        for (var decimals = 0; decimals < Decimals; decimals++)
        {
            var grain = (decimal)Math.Pow(10, -decimals);
            var value = range.From is { } from && from > near ? Math.Ceiling(from / grain) * grain : Math.Floor(range.To!.Value / grain) * grain;
            if (range.Holds(value))
            {
                return value;
            }
        }

        return range.From is { } low && low > near ? low : range.To!.Value;
    }
}
