namespace Byrelaw.Judging.Criteria;

/// <summary>A demand on a number whose limits may be shares of one of her facts.</summary>
internal sealed class NumberLimits(HerdDays days, NumberTest test)
{
    private readonly Limits _fixed = Limits.Of(test.Comparison, test.Low.Value, test.High.Value);

    /// <summary>Whether the limits are the same for every animal.</summary>
    public bool IsFixed { get; } = test.Low.PercentOf is null && test.High.PercentOf is null;

    /// <summary>The limits for one animal. A limit that is a share of a fact that is not known may be any number: what the
    /// other limit rules out is ruled out all the same.</summary>
    public Limits For(int animal, Notes? notes)
    {
        if (IsFixed)
        {
            return _fixed;
        }

        var isLowKnown = Value(animal, test.Low, out var low, notes);
        var isHighKnown = Value(animal, test.High, out var high, notes) && (isLowKnown || test.Comparison == Comparison.Between);
        var limits = Limits.Of(test.Comparison, low, high);
        if (!isLowKnown && !double.IsInfinity(limits.Low))
        {
            limits = limits with { Low = double.PositiveInfinity, LowAtLeast = double.NegativeInfinity };
        }

        return isHighKnown || double.IsInfinity(limits.High)
            ? limits
            : limits with { High = double.NegativeInfinity, HighAtMost = double.PositiveInfinity };
    }

    private bool Value(int animal, Limit limit, out double value, Notes? notes)
    {
        value = limit.Value;
        if (limit.PercentOf is not { } fact)
        {
            return true;
        }

        var column = days.Herd.Facts[fact.Id];
        if (column.States[animal] != FactState.Known)
        {
            notes?.FactMissing(animal, fact.Name, column.States[animal] == FactState.Unreadable);
            return false;
        }

        value = Limits.Round(limit.Value * column.Numbers[animal] / 100);
        notes?.Fact(animal, fact.Name, ValueText.Write(column.Numbers[animal], fact.Unit?.Symbol));
        return true;
    }
}
