namespace Byrelaw.Judging.Criteria;

/// <summary><c>breeding index at least 120</c>.</summary>
internal sealed class FactNumberCriterion(HerdDays days, FactNumberCondition condition)
    : LeafCriterion(days, condition, restsOnCoverage: false)
{
    private readonly NumberLimits _limits = new(days, condition.Test);

    protected override Kleene Decide(int animal, int day, ref int until, Notes? notes)
    {
        var column = Days.Herd.Facts[condition.Fact.Id];
        if (column.States[animal] != FactState.Known)
        {
            notes?.FactMissing(animal, condition.Fact.Name, column.States[animal] == FactState.Unreadable);
            return Kleene.Unknown;
        }

        var limits = _limits.For(animal, notes);
        var value = column.Numbers[animal];
        notes?.Fact(animal, condition.Fact.Name, ValueText.Write(value, condition.Fact.Unit?.Symbol));
        notes?.Number(value, value, condition.Fact.Unit?.Symbol, null, 1, limits);
        notes?.Remedy(new Remedy(RemedyKind.ForGood, [condition.Fact.Name]));
        return Kleene.Of(limits.Accept(value, value));
    }
}
