using Byrelaw.Judging.Days;
using Byrelaw.Judging.Explaining;
using Byrelaw.Judging.Herdmates;
using Byrelaw.Judging.Truths;
using Byrelaw.Judging.Verdicts;
using Byrelaw.Language.Rulebooks.Conditions;
using Byrelaw.Records.Herds;

namespace Byrelaw.Judging.Criteria;

/// <summary>
/// <c>breeding index not in the top 20% of the herd</c>. With T animals, k = ceil(T x P / 100), u of them without a
/// value and r known values greater than hers: in the top if r + u is less than k, not in it if r is at
/// least k, else not known. Animals that may or may not be of the herd must not matter either way.
/// </summary>
internal sealed class StandingCriterion(HerdDays days, StandingCondition condition, HerdmateDays herdmates)
    : LeafCriterion(days, condition, restsOnCoverage: condition.Group != HerdGroup.Herd)
{
    protected override Truth Decide(int animal, int day, bool strict, ref int until, ref bool pending, Notes? notes)
    {
        var column = Days.Herd.Facts[condition.Fact.Id];
        if (column.States[animal] != FactState.Known)
        {
            notes?.FactMissing(animal, condition.Fact.Name, column.States[animal] == FactState.Unreadable);
            return Truth.Unknown;
        }

        var value = column.Numbers[animal];
        var mates = herdmates.On(day, strict, ref until);
        var (greater, notGreater) = mates.Sure.Split(value);
        var (perhapsGreater, perhapsNot) = mates.Perhaps.Split(value);
        var count = mates.Sure.Count;
        notes?.Fact(animal, condition.Fact.Name, Numbers.Write(value, condition.Fact.Unit?.Symbol));
        notes?.Standing(greater, mates.Sure.WithoutValue, count, value);

        // Worst for "in": all who may be better are of the herd. Worst for "not in": all who are not better are.
        var isIn = greater + perhapsGreater + mates.Sure.WithoutValue + mates.Perhaps.WithoutValue
            < Places(count + perhapsGreater + mates.Perhaps.WithoutValue);
        var isOut = greater >= Places(count + perhapsNot + mates.Perhaps.WithoutValue);
        if (!isIn && !isOut)
        {
            notes?.HerdValuesMissing(condition.Fact.Name);
            return Truth.Unknown;
        }

        notes?.Remedy(new Remedy(RemedyKind.ForGood, [condition.Fact.Name]));
        return isIn != condition.Not ? Truth.True : Truth.False;
    }

    /// <summary>How many places the top has.</summary>
    private double Places(int of) => Math.Ceiling(Math.Round(of * condition.Percent / 100, Limits.Decimals));
}
