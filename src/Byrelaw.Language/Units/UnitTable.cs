namespace Byrelaw.Language.Units;

/// <summary>The units that rule files and records may use. Spellings are compared folded, so <c>µmol/L</c>,
/// <c>μmol/L</c>, <c>umol/L</c> and <c>umol/l</c> are one unit.</summary>
public static class UnitTable
{
    private static readonly FrozenDictionary<string, Unit> ByFoldedSpelling;

    static UnitTable()
    {
        var spellings = new (Unit Unit, string[] Also)[]
        {
            (new("kg", Quantity.Mass, 1), ["kgs", "kilo", "kilos", "kilogram", "kilograms"]),
            (new("g", Quantity.Mass, 1e-3), ["gram", "grams"]),
            (new("mg", Quantity.Mass, 1e-6), []),
            (new("ug", Quantity.Mass, 1e-9), []),

            // The international pound is 0.45359237 kg exactly (international agreement of 1959; from memory).
            (new("lb", Quantity.Mass, 0.45359237), ["lbs", "pound", "pounds"]),

            (new("m", Quantity.Length, 1), ["metre", "metres", "meter", "meters"]),
            (new("cm", Quantity.Length, 1e-2), []),
            (new("mm", Quantity.Length, 1e-3), []),

            (new("L", Quantity.Volume, 1), ["litre", "litres", "liter", "liters"]),
            (new("mL", Quantity.Volume, 1e-3), []),

            (new("g/L", Quantity.MassPerVolume, 1), ["mg/mL"]),
            (new("g/dL", Quantity.MassPerVolume, 10), []),
            (new("mg/L", Quantity.MassPerVolume, 1e-3), ["ug/mL"]),
            (new("mg/dL", Quantity.MassPerVolume, 1e-2), []),
            (new("ug/L", Quantity.MassPerVolume, 1e-6), ["ng/mL"]),
            (new("ug/dL", Quantity.MassPerVolume, 1e-5), []),
            (new("ng/L", Quantity.MassPerVolume, 1e-9), ["pg/mL"]),

            (new("mol/L", Quantity.MolesPerVolume, 1), []),
            (new("mmol/L", Quantity.MolesPerVolume, 1e-3), []),
            (new("umol/L", Quantity.MolesPerVolume, 1e-6), []),
            (new("nmol/L", Quantity.MolesPerVolume, 1e-9), []),
            (new("pmol/L", Quantity.MolesPerVolume, 1e-12), []),

            (new("g/kg", Quantity.MassPerMass, 1), ["mg/g"]),
            (new("mg/kg", Quantity.MassPerMass, 1e-3), ["ug/g"]),
            (new("ug/kg", Quantity.MassPerMass, 1e-6), []),

            (new("mol/kg", Quantity.MolesPerMass, 1), []),
            (new("mmol/kg", Quantity.MolesPerMass, 1e-3), []),
            (new("umol/kg", Quantity.MolesPerMass, 1e-6), []),
            (new("nmol/kg", Quantity.MolesPerMass, 1e-9), []),

            (new("U/L", Quantity.ActivityPerVolume, 1), ["IU/L"]),
            (new("kU/L", Quantity.ActivityPerVolume, 1e3), ["kIU/L"]),

            (new("cells/mL", Quantity.CellsPerVolume, 1), []),
            (new("kcells/mL", Quantity.CellsPerVolume, 1e3), ["cells/uL"]),

            (new("degC", Quantity.Temperature, 1), ["\u00B0C", "C"]),
        };
        All = [.. spellings.Select(spelling => spelling.Unit)];
        ByFoldedSpelling = spellings
            .SelectMany(spelling => spelling.Also.Prepend(spelling.Unit.Symbol).Select(text => (Text: NameFolding.Fold(text), spelling.Unit)))
            .ToFrozenDictionary(pair => pair.Text, pair => pair.Unit, StringComparer.Ordinal);
    }

    /// <summary>Every unit once, by quantity, the base unit first.</summary>
    public static ImmutableArray<Unit> All { get; }

    /// <summary>The unit with this spelling; null where there is none.</summary>
    public static Unit? Find(string spelling) => ByFoldedSpelling.GetValueOrDefault(NameFolding.Fold(spelling));
}
