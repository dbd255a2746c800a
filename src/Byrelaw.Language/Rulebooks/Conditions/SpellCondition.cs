namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary><c>running with bull</c>, <c>not running with bull in the last 35 days</c>: on the day of judging, or with windows on any day of them.</summary>
/// <param name="Spell">Which spell.</param>
/// <param name="Not">True for <c>not</c>.</param>
/// <param name="Windows">None for the day of judging itself; else on any day of the window.</param>
public sealed record SpellCondition(Spell Spell, bool Not, ImmutableArray<Window> Windows) : Condition(Windows)
{
    /// <inheritdoc />
    public override string Subject => $"{(Not ? "not " : "")}{Spell.Name}";

    /// <inheritdoc />
    public override Demand? Demand => null;

    /// <inheritdoc />
    protected override Condition? Make(OtherParts others) => others.Spell(Spell) is { } spell ? this with { Spell = spell } : null;
}
