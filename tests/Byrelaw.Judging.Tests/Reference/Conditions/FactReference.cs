namespace Byrelaw.Judging.Tests.Reference;

/// <summary>Conditions on what is true of an animal without a date.</summary>
public static class FactReference
{
    public static Truth At(Condition condition, Knowledge knowledge, Moment moment)
    {
        var facts = knowledge.Farm.Animals[moment.Animal].Facts;
        switch (condition)
        {
            case FactNumberCondition number:
                return facts[number.Fact.Id].Number is { } value
                    ? NumberReference.Compare(number.Test, ValueRange.Exactly(value), facts)
                    : Truth.Unknown;
            case FactTextCondition text:
                // "`is`, `is not` (the Kleene opposite of `is`), `is one of`."
                // "For values that a file adds, a condition of a file that does not see it is not known where it says `is not` or stands under `not` or `none of`."
                return facts[text.Fact.Id].Text is { } words && !Barred.IsUnforeseen(text, knowledge.Farm.Animals[moment.Animal])
                    ? Kleene.Of(text.Values.Any(wanted => NameFolding.Fold(wanted) == NameFolding.Fold(words)) != text.IsNot)
                    : Truth.Unknown;
            case FactDateCondition date:
                return facts[date.Fact.Id].Day is { } day ? Kleene.Of((day == DayNumber.Of(date.Date)) != date.IsNot) : Truth.Unknown;
            case RecordedCondition recorded:
                var cell = facts[recorded.Fact.Id];
                var truth = cell.IsKnown ? Truth.True : cell is { IsBlank: true, HasNoColumn: false } ? Truth.False : Truth.Unknown;
                return recorded.IsNot ? Kleene.Not(truth) : truth;
            default:
                throw new ArgumentOutOfRangeException(nameof(condition));
        }
    }
}
