namespace Byrelaw.Language.Reasoning.Claims;

/// <summary>Whether she was in a spell, today or on any day of the windows.</summary>
internal sealed class SpellClaims(Happenings happenings, WindowClaims windows)
{
    public Claim Of(SpellCondition condition, bool isTrue)
    {
        var spell = happenings.Of(condition.Spell);
        if (condition.Windows.IsEmpty)
        {
            return condition.Not != isTrue
                ? new Claim([happenings.Happened(spell, condition).And(Together.Of(Bound.Below(spell.Ago, 0, condition)))])
                : Claim.Of(Bound.Above(spell.Ago, 1, condition));
        }

        return condition.Not != isTrue
            ? windows.Some(spell, condition.Windows, condition)
            : windows.None(spell, condition.Windows, condition);
    }
}
