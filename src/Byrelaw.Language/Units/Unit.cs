namespace Byrelaw.Language.Units;

/// <summary>What a unit measures. Values convert within one quantity; mass and amount of substance
/// per the same base convert through a molar mass.</summary>
public enum Quantity
{
    /// <summary>Mass, base kg.</summary>
    Mass,

    /// <summary>Length, base m.</summary>
    Length,

    /// <summary>Volume, base L.</summary>
    Volume,

    /// <summary>Mass in a volume, base g/L.</summary>
    MassPerVolume,

    /// <summary>Amount of substance in a volume, base mol/L.</summary>
    MolesPerVolume,

    /// <summary>Mass in a mass, base g/kg.</summary>
    MassPerMass,

    /// <summary>Amount of substance in a mass, base mol/kg.</summary>
    MolesPerMass,

    /// <summary>Enzyme activity in a volume, base U/L.</summary>
    ActivityPerVolume,

    /// <summary>Cells in a volume, base cells/mL.</summary>
    CellsPerVolume,

    /// <summary>Temperature in degrees Celsius; converts to nothing else.</summary>
    Temperature,
}

/// <summary>A unit of measurement as rule files and records write it.</summary>
/// <param name="Symbol">The one spelling that is printed, such as <c>umol/L</c>.</param>
/// <param name="Quantity">What it measures.</param>
/// <param name="InBase">How many of the quantity's base unit one of this unit is.</param>
public sealed record Unit(string Symbol, Quantity Quantity, double InBase);
