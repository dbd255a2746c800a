using Byrelaw.Language.Rulebooks.Conditions;

namespace Byrelaw.Planning.Carrying;

/// <summary>Which cows are dry on a day: dried off since their last calving, or bought dry.</summary>
public sealed class DryCows
{
    private readonly Judge _judge;
    private readonly Lazy<Truth[]?> _driedOff;

    private DryCows(Judge judge, LocalDate day) => (_judge, _driedOff) = (judge, new(() => DriedOff(judge, day)));

    /// <summary>Works it out when it is first asked.</summary>
    /// <param name="judge">Of the herd.</param>
    /// <param name="day">The day; after the known day, nothing more is taken to happen.</param>
    public static DryCows On(Judge judge, LocalDate day) => new(judge, day);

    /// <summary>Whether an animal is dry, if she is a cow. Where the files have no word for drying off, nobody is.</summary>
    /// <param name="animal">Her place in the herd.</param>
    public Truth Of(int animal) => _driedOff.Value is not { } dried ? Truth.False : dried[animal] != Truth.True && IsBoughtDry(animal) ? Truth.True : dried[animal];

    /// <summary>As the spell from drying off until calving is judged: what is not on record and not promised is not known.</summary>
    private static Truth[]? DriedOff(Judge judge, LocalDate day) =>
        judge.Herd.Vocabulary.FindKind("drying off") is EventKind from && judge.Herd.Vocabulary.Calving is { } until
            ? judge.TruthsOn(new SpellCondition(new Spell("dried off until she calves", from, until, default), false, []) { Span = default }, day) : null;

    /// <summary>Whether the row by which she came says <c>dry</c>, and no calving is on record since.</summary>
    private bool IsBoughtDry(int animal)
    {
        var herd = _judge.Herd;
        var calvings = herd.Runs[herd.Vocabulary.Calving!.Id];
        foreach (var kind in herd.Vocabulary.Kinds.OfType<EventKind>().Where(kind => kind.Effect == HerdEffect.Joins && !kind.Details.IsEmpty))
        {
            var run = herd.Runs[kind.Id];
            for (var at = run.Starts[animal]; at < run.Starts[animal + 1]; at++)
            {
                if (herd.Details.Of(run.Lines[at]).ToArray().Any(cell => cell is { State: FactState.Known, Text: { } text } && NameFolding.Fold(text) == "dry")
                    && (calvings.Starts[animal] == calvings.Starts[animal + 1] || calvings.Days[calvings.Starts[animal + 1] - 1] < run.Days[at]))
                {
                    return true;
                }
            }
        }

        return false;
    }
}
