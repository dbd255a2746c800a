namespace Byrelaw.Language.Units;

/// <summary>Turns an amount in one unit into the same amount in another.</summary>
public static class UnitConversion
{
    /// <summary>What a value in <paramref name="from"/> is multiplied by to be in <paramref name="to"/>;
    /// null where the two do not measure the same.</summary>
    /// <param name="from">The unit at hand.</param>
    /// <param name="to">The unit wanted.</param>
    /// <param name="molarMass">In g/mol, for mass against amount of substance; null where none is declared.</param>
    public static double? Factor(Unit from, Unit to, double? molarMass = null)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(to);
        var inBase = from.InBase / to.InBase;
        return from.Quantity == to.Quantity ? inBase
            : NeedsMolarMass(from, to) && molarMass is { } mass ? (IsMolar(to) ? inBase / mass : inBase * mass)
            : null;
    }

    /// <summary>Whether the two measure the same once a molar mass is declared: mass and amount of substance in the same base.</summary>
    public static bool NeedsMolarMass(Unit from, Unit to)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(to);
        return (from.Quantity, to.Quantity) is
            (Quantity.MassPerVolume, Quantity.MolesPerVolume) or (Quantity.MolesPerVolume, Quantity.MassPerVolume)
            or (Quantity.MassPerMass, Quantity.MolesPerMass) or (Quantity.MolesPerMass, Quantity.MassPerMass);
    }

    /// <summary>A value times a factor, rounded to 12 significant digits: 0.007 mmol/L is 7 umol/L exactly,
    /// not 7.000000000000001.</summary>
    public static double Convert(double value, double factor) =>
        factor == 1 ? value : double.Parse((value * factor).ToString("G12", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    /// <summary>The value in <paramref name="to"/>; null where the units do not measure the same.</summary>
    public static double? Convert(double value, Unit from, Unit to, double? molarMass = null) =>
        Factor(from, to, molarMass) is { } factor ? Convert(value, factor) : null;

    private static bool IsMolar(Unit unit) => unit.Quantity is Quantity.MolesPerVolume or Quantity.MolesPerMass;
}
