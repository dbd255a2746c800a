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
        if (notes is null && Quick(animal, day, ref until, out var quick))
        {
            return quick;
        }

        Days.Steps?.Take();
        notes?.Begin();
        if (restsOnCoverage && day <= Days.KnownDay)
        {
            until = Math.Min(until, Days.KnownDay);
        }

        var answer = Decide(animal, day, ref until, notes);
        notes?.Close(condition, answer.Assumed);
        return answer;
    }

    /// <summary>
    /// The same answer for an animal whose case is a plain one, which most are: one kind, a certain anchor,
    /// records kept throughout. False where it is not; nothing has been touched then.
    /// </summary>
    protected virtual bool Quick(int animal, int day, ref int until, out Kleene answer)
    {
        answer = Kleene.Unknown;
        return false;
    }

    /// <summary>The same answer without notes of its own, for a criterion that asks another several times.</summary>
    internal Kleene Decided(int animal, int day, ref int until, Notes? notes) => Decide(animal, day, ref until, notes);

    /// <summary>Decides for one animal and day: as in <see cref="Criterion.On"/>.</summary>
    protected abstract Kleene Decide(int animal, int day, ref int until, Notes? notes);
}
