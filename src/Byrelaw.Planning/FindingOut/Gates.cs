using Byrelaw.Judging.Lists;
using Byrelaw.Language.Rulebooks.Conditions;

namespace Byrelaw.Planning.FindingOut;

/// <summary>All that must hold of an animal for something, each on its own days.</summary>
/// <param name="Lists">The lists whose rules must hold, and on which days.</param>
/// <param name="Suits">What a method asks besides; null for nothing.</param>
/// <param name="On">The day on which that is asked.</param>
/// <param name="By">By then what is not known must be in hand.</param>
internal sealed record Gates(ImmutableArray<GateDays> Lists, Condition? Suits, LocalDate On, LocalDate By);

/// <summary>A list on some days in a row.</summary>
internal sealed record GateDays(Choice Choice, LocalDate From, LocalDate To);

/// <summary>What must hold, asked of a farm as it is supposed to be.</summary>
internal sealed class GateCheck
{
    private readonly Gates _gates;
    private readonly ListChecks[] _lists;
    private readonly Lazy<Truth[]?> _suited;

    public GateCheck(Judge judge, Gates gates)
    {
        _gates = gates;
        _lists = [.. gates.Lists.Select(gate => judge.ChecksOf(gate.Choice))];
        _suited = new(() => gates.Suits is null ? null : judge.TruthsOn(gates.Suits, gates.On));
    }

    /// <summary>Whether all of it surely holds of her.</summary>
    public bool IsSure(int animal)
    {
        for (var i = 0; i < _lists.Length; i++)
        {
            if (_lists[i].Of(animal, _gates.Lists[i].From, _gates.Lists[i].To) != Truth.True)
            {
                return false;
            }
        }

        return Suited(animal) == Truth.True;
    }

    /// <summary>Whether one rule surely holds of her, or what the method asks.</summary>
    public bool Holds(OpenRule rule, int animal) => (rule.Gate < 0
        ? Suited(animal) : _lists[rule.Gate].Of(rule.Name, animal, _gates.Lists[rule.Gate].From, _gates.Lists[rule.Gate].To)) == Truth.True;

    private Truth Suited(int animal) => _suited.Value?[animal] ?? Truth.True;
}
