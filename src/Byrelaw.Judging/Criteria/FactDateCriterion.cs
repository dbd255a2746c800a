namespace Byrelaw.Judging.Criteria;

/// <summary><c>dam genomic date is 2026-02-01</c>.</summary>
internal sealed class FactDateCriterion(HerdDays days, FactDateCondition condition)
    : LeafCriterion(days, condition, restsOnCoverage: false)
{
    private readonly int _wanted = Day.Number(condition.Date);

    protected override Kleene Decide(int animal, int day, ref int until, Notes? notes)
    {
        var column = Days.Herd.Facts[condition.Fact.Id];
        if (column.States[animal] != FactState.Known)
        {
            notes?.FactMissing(animal, condition.Fact.Name, column.States[animal] == FactState.Unreadable);
            return Kleene.Unknown;
        }

        var found = (int)column.Numbers[animal];
        notes?.Fact(animal, condition.Fact.Name, ValueText.WriteDay(found));
        notes?.Text(ValueText.WriteDay(found));
        notes?.Remedy(new Remedy(RemedyKind.ForGood, [condition.Fact.Name]));
        return (found == _wanted) != condition.IsNot ? Kleene.True : Kleene.False;
    }
}
