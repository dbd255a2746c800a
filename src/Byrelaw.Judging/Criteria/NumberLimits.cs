using Byrelaw.Judging.Days;
using Byrelaw.Judging.Explaining;
using Byrelaw.Language.Rulebooks.Conditions;
using Byrelaw.Records.Herds;

namespace Byrelaw.Judging.Criteria;

/// <summary>A demand on a number whose limits may be shares of one of her facts.</summary>
internal sealed class NumberLimits(HerdDays days, NumberTest test)
{
    private readonly Limits _fixed = Limits.Of(test.Comparison, test.Low.Value, test.High.Value);
    /// <summary>Whether the limits are the same for every animal.</summary>
    public bool IsFixed { get; } = test.Low.PercentOf is null && test.High.PercentOf is null;

    /// <summary>The limits for one animal.</summary>
    /// <returns>False where a fact they are a share of is not known.</returns>
    public bool For(int animal, out Limits limits, Notes? notes)
    {
        limits = _fixed;
        if (IsFixed)
        {
            return true;
        }

        var isKnown = Value(animal, test.Low, out var low, notes);
        isKnown &= Value(animal, test.High, out var high, notes);
        limits = Limits.Of(test.Comparison, low, high);
        return isKnown;
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
        notes?.Fact(animal, fact.Name, Numbers.Write(column.Numbers[animal], fact.Unit?.Symbol));
        return true;
    }
}
