namespace Byrelaw.Language.Binding.Conditions;

/// <summary>What a limit is compared with.</summary>
/// <param name="Name">The measure's or fact's name.</param>
/// <param name="Unit">Its unit; null for none.</param>
/// <param name="Scale">The limits of its scale; null for none.</param>
/// <param name="MolarMass">For conversion.</param>
internal sealed record AmountSubject(string Name, Unit? Unit, Scale? Scale, double? MolarMass)
{
    /// <summary>A measure. Of a change, the scale goes from one end's loss to the other end's gain.</summary>
    public static AmountSubject Of(MeasureKind measure, bool isChange) => new(
        measure.Name, measure.Unit,
        measure.Scale is { } scale && isChange ? new Scale(scale.From - scale.To, scale.To - scale.From) : measure.Scale,
        measure.MolarMass);

    /// <summary>A fact that is a number or an amount.</summary>
    public static AmountSubject Of(Fact fact) => new(fact.Name, fact.Unit, null, null);
}

/// <summary>Limits with units.</summary>
internal static class AmountBinding
{
    /// <summary>A demand on a value; null where a limit does not fit it.</summary>
    public static NumberTest? NumberTest(this Context context, CompareSyntax compare, AmountSubject subject)
    {
        // In `between 7 and 18 umol/L` the unit after the second number is said of both.
        var sharedUnit = compare.High is { IsPercent: false } ? compare.High.Unit : null;
        var low = context.Limit(compare.Low, subject, sharedUnit);
        var high = compare.High is null ? low : context.Limit(compare.High, subject, null);
        if (low is null || high is null)
        {
            return null;
        }

        return low.Value > high.Value && low.PercentOf == high.PercentOf
            ? context.Fail<NumberTest>(AmountProblems.Backwards(compare.Span))
            : new NumberTest(compare.Comparison, low, high);
    }

    /// <summary>A demand on an age or a time, written as a comparison; null where a limit is no length of time.</summary>
    public static TimeTest? TimeTest(this Context context, CompareSyntax compare)
    {
        var low = context.Duration(compare.Low, compare.High?.Unit);
        var high = compare.High is null ? null : context.Duration(compare.High, null);
        return low is null || (compare.High is not null && high is null) ? null : context.TimeTest(compare, compare.Comparison, low, high);
    }

    /// <summary>A demand on a count, written as a comparison; null where a limit is no whole number.</summary>
    public static CountTest? CountTest(this Context context, CompareSyntax compare, string name)
    {
        foreach (var amount in (AmountSyntax?[])[compare.Low, compare.High])
        {
            if (amount is { Unit: not null } or { IsPercent: true })
            {
                return context.Fail<CountTest>(AmountProblems.UnitNotWanted(amount.Unit?.Span ?? amount.Span, name));
            }
        }

        return context.CountTest(compare, compare.Comparison, compare.Low.Value, compare.High?.Value);
    }

    private static DurationSyntax? Duration(this Context context, AmountSyntax amount, UnitSyntax? sharedUnit)
    {
        var unit = amount.Unit ?? sharedUnit;
        return !amount.IsPercent && unit is not null && TimeUnitWords.Find(NameFolding.Fold(unit.Text)) is { } found
            ? new DurationSyntax(amount.Value, found) { Span = amount.Span }
            : context.Fail<DurationSyntax>(AmountProblems.NotATime(amount.Span));
    }

    private static Limit? Limit(this Context context, AmountSyntax amount, AmountSubject subject, UnitSyntax? sharedUnit)
    {
        if (amount.IsPercent)
        {
            return context.Share(amount, subject);
        }

        var unit = amount.Unit ?? sharedUnit;
        if (subject.Unit is null)
        {
            return unit is not null ? context.Fail<Limit>(AmountProblems.UnitNotWanted(unit.Span, subject.Name))
                : subject.Scale is { } scale && (amount.Value.Value < scale.From || amount.Value.Value > scale.To)
                    ? context.Fail<Limit>(AmountProblems.OutsideScale(amount.Span, subject.Name, scale))
                : new Limit(amount.Value.Value);
        }

        if (unit is null)
        {
            return context.Fail<Limit>(AmountProblems.NoUnit(amount.Span, subject.Name, subject.Unit));
        }

        if (UnitTable.Find(unit.Text) is not { } found)
        {
            return context.Fail<Limit>(AmountProblems.UnknownUnit(unit.Span));
        }

        return UnitConversion.Convert(amount.Value.Value, found, subject.Unit, subject.MolarMass) is { } value
            ? new Limit(value)
            : context.Fail<Limit>(AmountProblems.WrongUnit(unit.Span, subject.Name, subject.Unit, UnitConversion.NeedsMolarMass(found, subject.Unit)));
    }

    private static Limit? Share(this Context context, AmountSyntax amount, AmountSubject subject)
    {
        if (amount.Of is not { } name)
        {
            return context.Fail<Limit>(AmountProblems.ShareOfWhat(amount.Span));
        }

        if (context.Names.Find(name.Text) is not FactSymbol { Fact: var fact })
        {
            return context.Fail<Limit>(context.NotFound(name, symbol => symbol is FactSymbol, "a fact"));
        }

        return fact.Type is FactType.Number or FactType.Amount && fact.Unit?.Symbol == subject.Unit?.Symbol
            ? new Limit(amount.Value.Value, fact)
            : context.Fail<Limit>(AmountProblems.ShareDoesNotFit(amount.Span, fact.Name, subject.Name));
    }
}
