namespace Byrelaw.Judging.Criteria;

/// <summary>
/// <c>breeding index not in the top 20% of the herd</c>. With T animals, k = ceil(T x P / 100), u of them without a
/// value and r known values greater than hers: in the top if r + u is less than k, not in it if r is at
/// least k, else not known. Animals that may or may not be of the herd must not matter either way.
/// <c>with a value</c>: those without one are left out of T, and one whose value cannot be read may be of it or not.
/// </summary>
internal sealed class StandingCriterion(HerdDays days, StandingCondition condition, HerdmateDays herdmates)
    : LeafCriterion(days, condition, restsOnCoverage: condition.Group != HerdGroup.Herd)
{
    protected override Kleene Decide(int animal, int day, ref int until, Notes? notes)
    {
        var column = Days.Herd.Facts[condition.Fact.Id];
        if (column.States[animal] != FactState.Known)
        {
            notes?.FactMissing(animal, condition.Fact.Name, column.States[animal] == FactState.Unreadable);
            return Kleene.Unknown;
        }

        var value = column.Numbers[animal];
        notes?.Fact(animal, condition.Fact.Name, ValueText.Write(value, condition.Fact.Unit?.Symbol));
        notes?.Remedy(new Remedy(RemedyKind.ForGood, [condition.Fact.Name]));
        var mates = herdmates.On(day, strict: false, ref until);
        var answer = Kleene.Of(
            InTheTop(value, mates, notes),
            InTheTop(value, herdmates.On(day, strict: true, ref until), null));
        return condition.Not ? !answer : answer;
    }

    private Truth InTheTop(double value, Herdmates.Herdmates mates, Notes? notes)
    {
        var greater = mates.Sure.Greater(value);
        var perhapsGreater = mates.Perhaps.Greater(value);
        var perhapsNot = mates.Perhaps.Count - mates.Perhaps.WithoutValue - perhapsGreater;
        var count = mates.Sure.Count;
        notes?.Standing(greater, mates.Sure.WithoutValue + mates.LeftOut, count, value);

        // Worst for "in": all who may be better are of the herd. Worst for "not in": all who are not better are.
        if (greater + perhapsGreater + mates.Sure.WithoutValue + mates.Perhaps.WithoutValue
            < Places(count + perhapsGreater + mates.Perhaps.WithoutValue))
        {
            return Truth.True;
        }

        if (greater >= Places(count + perhapsNot + mates.Perhaps.WithoutValue))
        {
            return Truth.False;
        }

        notes?.HerdValuesMissing(condition.Fact.Name);
        return Truth.Unknown;
    }

    /// <summary>How many places the top has.</summary>
    private double Places(int of) => Math.Ceiling(Math.Round(of * condition.Percent / 100, Limits.Decimals));
}
