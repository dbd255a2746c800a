namespace Byrelaw.Records.Spellings;

/// <summary>Finds what values in a unit are multiplied by to be in the declared unit of a measure. For one thread.</summary>
internal sealed class UnitLookup
{
    private readonly SpellingTable _units = new();
    private readonly Dictionary<(int Kind, int Unit), double?> _factors = [];

    /// <summary>The unit's place in <see cref="UnitTable.All"/>; -1 where there is none.</summary>
    public int Find(ReadOnlySpan<byte> spelling)
    {
        if (!_units.TryFind(spelling, out var unit))
        {
            unit = UnitTable.Find(Encoding.UTF8.GetString(spelling)) is { } found ? UnitTable.All.IndexOf(found) : -1;
            _units.Set(spelling, unit);
        }

        return unit;
    }

    /// <summary>The factor; null where the unit measures something else.</summary>
    public double? Factor(MeasureKind measure, int unit)
    {
        if (!_factors.TryGetValue((measure.Id, unit), out var factor))
        {
            factor = UnitConversion.Factor(UnitTable.All[unit], measure.Unit!, measure.MolarMass);
            _factors.Add((measure.Id, unit), factor);
        }

        return factor;
    }
}
