using Byrelaw.Judging.Days;
using Byrelaw.Judging.Explaining;
using Byrelaw.Judging.Truths;
using Byrelaw.Language.Rulebooks.Conditions;

namespace Byrelaw.Judging.Criteria;

/// <summary>A condition that looks at records.</summary>
/// <param name="days">The herd.</param>
/// <param name="condition">What is asked.</param>
/// <param name="restsOnCoverage">Its answer may differ where coverage stops at the known day.</param>
internal abstract class LeafCriterion(HerdDays days, Condition condition, bool restsOnCoverage) : Criterion
{
    protected HerdDays Days { get; } = days;

    public sealed override Kleene On(int animal, int day, ref int until, Notes? notes)
    {
        notes?.Begin();
        if (restsOnCoverage && day <= Days.KnownDay)
        {
            until = Math.Min(until, Days.KnownDay);
        }

        var answer = Decide(animal, day, ref until, notes);
        notes?.Close(condition, answer.Assumed);
        return answer;
    }

    /// <summary>Decides for one animal and day: as in <see cref="Criterion.On"/>.</summary>
    protected abstract Kleene Decide(int animal, int day, ref int until, Notes? notes);
}
