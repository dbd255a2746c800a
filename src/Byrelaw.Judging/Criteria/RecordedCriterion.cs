namespace Byrelaw.Judging.Criteria;

/// <summary><c>official identity is recorded</c>. A cell that could not be read is neither, nor is one of a column that is not there.</summary>
internal sealed class RecordedCriterion(HerdDays days, RecordedCondition condition)
    : LeafCriterion(days, condition, restsOnCoverage: false)
{
    protected override Kleene Decide(int animal, int day, ref int until, Notes? notes)
    {
        var column = Days.Herd.Facts[condition.Fact.Id];
        if (!column.IsThere || column.States[animal] == FactState.Unreadable)
        {
            notes?.FactMissing(animal, condition.Fact.Name, isUnreadable: column.IsThere);
            return Kleene.Unknown;
        }

        var isRecorded = column.States[animal] == FactState.Known;
        if (notes is not null)
        {
            if (isRecorded)
            {
                var text = column.Texts.Length > 0 ? column.Texts[animal]!
                    : condition.Fact.Type == Language.Rulebooks.Words.FactType.Date ? ValueText.WriteDay((int)column.Numbers[animal])
                    : ValueText.Write(column.Numbers[animal], condition.Fact.Unit?.Symbol);
                notes.Fact(animal, condition.Fact.Name, text);
                notes.Text(text);
            }
            else
            {
                notes.Nothing();
            }

            notes.Remedy(condition.IsNot
                ? new Remedy(RemedyKind.ForGood, [condition.Fact.Name])
                : new Remedy(RemedyKind.NewResult, [condition.Fact.Name]));
        }

        return isRecorded != condition.IsNot ? Kleene.True : Kleene.False;
    }
}
