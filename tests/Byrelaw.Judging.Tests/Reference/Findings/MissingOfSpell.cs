namespace Byrelaw.Judging.Tests.Reference;

/// <summary>What may be missing of a spell. Several things may settle it, so what is said is not compared but tried: each thing said is open,
/// and were all of them kept, it would be known.</summary>
public sealed class MissingOfSpell(SpellCondition condition, IReadOnlyCollection<Missing> said, Knowledge knowledge, Moment moment)
{
    private readonly MissingDays _days = new(knowledge, moment);

    /// <summary>What is wrong with what is said to be missing; null where nothing is.</summary>
    public string? Wrong()
    {
        var anchors = _days.OfAnchors(condition.Windows).ToHashSet();
        if (anchors.Except(said).FirstOrDefault() is { } anchor)
        {
            return $"not missing {anchor}";
        }

        if (said.FirstOrDefault(missing => !anchors.Contains(missing) && !IsOpen(missing)) is { } known)
        {
            return $"missing {known}, which is known";
        }

        return knowledge.Windows.Possible(condition.Windows, moment.Animal, moment.Day, moment.Strict)?.MinBy(stretch => stretch.From) is not { } days
            || knowledge.Spells.IsKnown(condition.Spell, moment.Animal, condition.Windows.IsEmpty ? moment.Day : days.From, days.To, Covers, lost => said.Contains(_days.Of(lost, condition.Spell.From))) ? null
            : $"what is missing would not settle it: {string.Join(", ", said)}";
    }

    /// <summary>What is said of mobs, hers and the bulls', is not tried.</summary>
    private bool IsOpen(Missing missing)
    {
        if (missing.Reason is MissingReason.MobNotKnown or MissingReason.BullsMobNotKnown or MissingReason.MayBeABull
            || missing.Subject == knowledge.Rulebook.Vocabulary.MobMove.Name)
        {
            return true;
        }

        var kinds = new[] { condition.Spell.From, condition.Spell.Until }.Where(kind => missing.Subject is "born" || kind.Name == missing.Subject);
        return missing.Reason is MissingReason.UnreadableRow or MissingReason.StartNotOnRecord
            ? kinds.Any(kind => _days.Unread(kind, knowledge.Coverage.Dawn, moment.Day).Contains(missing))
            : kinds.Any(kind => !knowledge.Coverage.Keeps(
                moment.Animal, kind, missing.From is { } from ? DayNumber.Of(from) : knowledge.Coverage.Dawn, missing.To is { } to ? DayNumber.Of(to) : moment.Day));
    }

    /// <summary>Whether a day would be covered, were all that is said to be missing there, and said nothing.</summary>
    private bool Covers(Kind kind, int day) =>
        (knowledge.Coverage.Keeps(moment.Animal, kind, day, day) || said.Any(missing => IsOf(missing, kind, day)))
        && Unread(kind, day).All(said.Contains);

    /// <summary>A mob's row that begins a spell is the mob's, and no doubt of hers.</summary>
    private IEnumerable<Missing> Unread(Kind kind, int day) => _days.Unread(kind, day, day).Where(missing => missing.Reason != MissingReason.StartNotOnRecord)
        .Where(missing => !knowledge.Farm.Unread.Any(row => row.OfGroup && row.Line == missing.Line && kind.Id == condition.Spell.From.Id));

    private bool IsOf(Missing missing, Kind kind, int day) => missing.Reason switch
    {
        MissingReason.FactMissing => day < knowledge.Coverage.DeclaredSince(kind),
        MissingReason.NotKept => missing.Subject == kind.Name && !(missing.From is { } from && day < DayNumber.Of(from)) && !(missing.To is { } to && day > DayNumber.Of(to)),
        _ => false,
    };
}
