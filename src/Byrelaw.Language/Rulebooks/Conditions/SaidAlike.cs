namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>Finds defines and conditions of a rulebook that say the same in every word, whatever they are called: the floor asks what good rules ask.</summary>
public sealed class SaidAlike
{
    private readonly Rulebook _rulebook;
    private readonly Dictionary<string, int> _byText = new(StringComparer.Ordinal);
    private readonly int[] _meant;

    /// <summary>Looks at all defines.</summary>
    public SaidAlike(Rulebook rulebook)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        _rulebook = rulebook;
        _meant = new int[rulebook.Defines.Length];
        for (var i = 0; i < _meant.Length; i++)
        {
            var text = rulebook.Defines[i].IsBroken ? null : TextOf(rulebook.Defines[i].Condition);
            _meant[i] = text is null || _byText.TryAdd(text, i) ? i : _byText[text];
        }
    }

    /// <summary>The place of the first define that says the same as one; its own where none does.</summary>
    public int Define(int index) => _meant[index];

    /// <summary>What a condition says, the same for all that say the same; null where a name in it means nothing.</summary>
    public string? TextOf(Condition condition)
    {
        ArgumentNullException.ThrowIfNull(condition);
        return condition.Written().All(one => one is not BrokenCondition) && condition.With(new Meant(this)) is { } meant ? ConditionText.Meaning.Of(meant) : null;
    }

    private sealed class Meant(SaidAlike alike) : OtherParts
    {
        public override NamedCondition? Define(NamedCondition named) =>
            named.Index < 0 || named.Index >= alike._rulebook.Defines.Length ? null : named with { Define = $"#{alike._meant[named.Index]}" };
    }
}
