namespace Byrelaw.Judging.Criteria;

/// <summary><c>breed is one of Friesian, Jersey</c>.</summary>
internal sealed class FactTextCriterion(HerdDays days, FactTextCondition condition)
    : LeafCriterion(days, condition, restsOnCoverage: false)
{
    private readonly HashSet<string> _accepted = new(condition.Values.Select(NameFolding.Fold), StringComparer.Ordinal);
    private readonly Dictionary<string, bool> _seen = new(StringComparer.Ordinal);

    protected override Kleene Decide(int animal, int day, ref int until, Notes? notes)
    {
        var column = Days.Herd.Facts[condition.Fact.Id];
        if (column.States[animal] != FactState.Known || column.Texts[animal] is not { } text)
        {
            notes?.FactMissing(animal, condition.Fact.Name, column.States[animal] == FactState.Unreadable);
            return Kleene.Unknown;
        }

        notes?.Fact(animal, condition.Fact.Name, text);
        notes?.Text(text);
        if (condition.Doubts(text))
        {
            notes?.ValueNotForeseen(condition.Fact.Name);
            return Kleene.Unknown;
        }

        notes?.Remedy(new Remedy(RemedyKind.ForGood, [condition.Fact.Name]));
        return IsAccepted(text) != condition.IsNot ? Kleene.True : Kleene.False;
    }

    /// <summary>Folding is slow and the texts of a herd are few.</summary>
    private bool IsAccepted(string text)
    {
        if (!_seen.TryGetValue(text, out var isAccepted))
        {
            _seen[text] = isAccepted = _accepted.Contains(NameFolding.Fold(text));
        }

        return isAccepted;
    }
}
