namespace Byrelaw.Judging.Tests.Reference;

/// <summary><c>running with bull</c> on the day of judging itself; with a window, on any day of it.</summary>
public static class SpellWindowReference
{
    public static Truth At(SpellCondition condition, Knowledge knowledge, Moment moment)
    {
        var truth = condition.Windows.IsEmpty
            ? knowledge.Spells.At(condition.Spell, moment)
            : knowledge.Windows.Possible(condition.Windows, moment.Animal, moment.Day, moment.Strict) is { } possible
                ? Kleene.SameForAll(possible.Select(stretch => knowledge.Spells.OnAny(condition.Spell, moment, stretch.From, stretch.To)))
                : Truth.Unknown;
        return condition.Not ? Kleene.Not(truth) : truth;
    }
}
