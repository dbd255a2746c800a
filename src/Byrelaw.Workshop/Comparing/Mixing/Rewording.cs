namespace Byrelaw.Workshop.Comparing.Mixing;

/// <summary>Says a condition of one rulebook in the words, defines and dates of a mixed one. What cannot be said there is broken.</summary>
internal sealed class Rewording(MixedWords words, MixedDefines defines, Programme? programme) : OtherParts
{
    public Condition Of(Condition condition) => condition.With(this) ?? new BrokenCondition { Span = condition.Span };

    public override Condition? Item(Condition item) => Of(item);

    public override Kind? Kind(Kind kind) => words.Find(kind);

    public override Fact? Fact(Fact fact) => words.Find(fact);

    public override Spell? Spell(Spell spell) => words.Find(spell);

    public override NamedCondition? Define(NamedCondition named) =>
        defines.Find(named.Define) is var (index, name) ? named with { Define = name, Index = index } : null;

    /// <summary>A date of the programme is the mixed programme's.</summary>
    public override DateReference Date(DateReference date) => date.Name is { } name ? date with { Value = programme?.Date(name) } : date;
}
