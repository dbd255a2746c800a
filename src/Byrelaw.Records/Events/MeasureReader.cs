namespace Byrelaw.Records.Events;

/// <summary>Reads the results of measures into their declared unit or onto their scale.</summary>
internal sealed class MeasureReader(EventColumns columns, List<Diagnostic> problems)
{
    private const double AbsoluteZero = -273.15;
    private readonly UnitLookup _units = new();

    /// <summary>The values that the result allows; false where it cannot be read, which is reported.</summary>
    public bool TryRead(CsvRows row, MeasureKind measure, out AllowedRange range)
    {
        range = AllowedRange.NotKnown;
        var value = row.Cell(columns.Value);
        if (PendingCell.Is(value))
        {
            return UnitFits(row, measure, row.Cell(columns.Unit), columns.Unit, out _);
        }

        if (!MeasuredCell.TryRead(value, out var bound, out var number, out var unitInValue))
        {
            return Report(ValueProblems.NotANumber(row.Text(), columns.Value));
        }

        var unit = unitInValue.IsEmpty ? row.Cell(columns.Unit) : unitInValue;
        var cell = unitInValue.IsEmpty ? columns.Unit : columns.Value;
        if (!unitInValue.IsEmpty && !row.Cell(columns.Unit).IsEmpty)
        {
            return Report(ValueProblems.TwoUnits(row.Text(), columns.Unit, Encoding.UTF8.GetString(unitInValue)));
        }

        if (measure.Scale is null && unit.IsEmpty)
        {
            return Report(ValueProblems.NoUnit(row.Text(), columns.Value, measure));
        }

        if (!UnitFits(row, measure, unit, cell, out var factor))
        {
            return false;
        }

        number = UnitConversion.Convert(number, factor);
        return measure.Scale is { } scale
            ? OnScale(row, measure, scale, bound, number, out range)
            : Amount(row, measure, bound, number, out range);
    }

    private bool UnitFits(CsvRows row, MeasureKind measure, ReadOnlySpan<byte> spelling, int cell, out double factor)
    {
        factor = 1;
        if (spelling.IsEmpty)
        {
            return true;
        }

        if (measure.Unit is not { } declared)
        {
            return Report(ValueProblems.UnitNotTaken(row.Text(), cell, Encoding.UTF8.GetString(spelling), measure));
        }

        var unit = _units.Find(spelling);
        if (unit < 0)
        {
            return Report(ValueProblems.UnknownUnit(row.Text(), cell, Encoding.UTF8.GetString(spelling), declared));
        }

        if (_units.Factor(measure, unit) is not { } found)
        {
            var text = Encoding.UTF8.GetString(spelling);
            return Report(UnitConversion.NeedsMolarMass(UnitTable.All[unit], declared)
                ? ValueProblems.NoMolarMass(row.Text(), cell, text, measure)
                : ValueProblems.OtherKindOfUnit(row.Text(), cell, text, measure.Name, declared));
        }

        factor = found;
        return true;
    }

    private bool OnScale(CsvRows row, MeasureKind measure, Scale scale, MeasureBound bound, double number, out AllowedRange range)
    {
        range = MeasuredCell.Range(bound, number, scale.From, scale.To);
        return number < scale.From || number > scale.To ? Report(ValueProblems.OffScale(row.Text(), columns.Value, measure.Name, scale))
            : range.Low <= range.High || Report(ValueProblems.NothingBeyond(row.Text(), columns.Value, measure, scale.From));
    }

    private bool Amount(CsvRows row, MeasureKind measure, MeasureBound bound, double number, out AllowedRange range)
    {
        var lowest = measure.Unit!.Quantity == Quantity.Temperature ? AbsoluteZero : 0;
        range = MeasuredCell.Range(bound, number, lowest, double.PositiveInfinity);
        return number < lowest ? Report(ValueProblems.Negative(row.Text(), columns.Value, measure.Name, lowest))
            : range.Low <= range.High || Report(ValueProblems.NothingBeyond(row.Text(), columns.Value, measure, lowest));
    }

    private bool Report(Diagnostic problem)
    {
        problems.Add(problem);
        return false;
    }
}
