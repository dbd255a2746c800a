using Byrelaw.Judging.Days;
using Byrelaw.Judging.Explaining;
using Byrelaw.Judging.Truths;
using Byrelaw.Language.Rulebooks.Conditions;

namespace Byrelaw.Judging.Criteria;

/// <summary>A condition that looks at records: it is decided once with days after the known day taken as
/// quiet ones, and once more, strictly, where that could make a difference.</summary>
internal abstract class LeafCriterion(HerdDays days, Condition condition, bool restsOnCoverage) : Criterion
{
    protected HerdDays Days { get; } = days;

    public sealed override Kleene On(int animal, int day, ref int until, Notes? notes)
    {
        notes?.Begin();
        var pending = false;
        var assumed = Decide(animal, day, strict: false, ref until, ref pending, notes);
        var strict = assumed;
        if (restsOnCoverage)
        {
            if (day <= Days.KnownDay)
            {
                until = Math.Min(until, Days.KnownDay);
            }
            else if (assumed != Truth.Unknown)
            {
                var ignored = false;
                strict = Decide(animal, day, strict: true, ref until, ref ignored, null);
            }
        }

        notes?.Close(condition, assumed);
        return Kleene.Of(assumed, strict, pending && assumed == Truth.Unknown);
    }

    /// <summary>Decides for one animal and day.</summary>
    /// <param name="animal">Her place in the herd.</param>
    /// <param name="day">The day of judging.</param>
    /// <param name="strict">Coverage stops at the known day.</param>
    /// <param name="until">As in <see cref="Criterion.On"/>.</param>
    /// <param name="pending">Set where a sample exists whose result is not known.</param>
    /// <param name="notes">Where to write down what was found.</param>
    protected abstract Truth Decide(int animal, int day, bool strict, ref int until, ref bool pending, Notes? notes);
}
