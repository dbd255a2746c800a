namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// "Joining the herd ends every spell: the day she joins is its last possible day. `no bull in on this farm since D` says that no spell runs
/// on D either: D-1 is the last possible day. Where start and end are promised since D with `because` and `agreed by`, and no male of 6
/// months is on record then, likewise." A bull who was put in on record and not taken out is in: the promise does not take him out.
/// </summary>
public sealed class SpellEndsReference(FarmAsRead farm, RecordKeeping? keeping)
{
    private readonly Dictionary<string, HashSet<int>> _known = [];

    /// <summary>Whether a day is the last on which any spell from before can have run.</summary>
    public bool EndsAll(Spell spell, int day)
    {
        if (!_known.TryGetValue(spell.Name, out var days))
        {
            _known[spell.Name] = days = [.. new[] { None(spell), Agreed(spell) is { } agreed && !AnyGrownMale(spell, agreed) && !AnyPutIn(spell, agreed) ? agreed : null }.OfType<int>().Select(first => first - 1)];
        }

        return days.Contains(day);
    }

    /// <summary>Whether she joins the herd.</summary>
    public bool Joins(int animal, int day) =>
        farm.Happenings.Any(row => row.Animal == animal && row.Day == day && row.Kind is EventKind { Effect: HerdEffect.Joins });

    private int? None(Spell spell) => !IsPromised(spell.From) ? null : Latest(complete => complete.IsNone && Has(complete, spell.From));

    private int? Agreed(Spell spell)
    {
        var from = Latest(complete => IsAgreed(complete) && Has(complete, spell.From));
        return from == Latest(complete => IsAgreed(complete) && Has(complete, spell.Until)) && IsPromised(spell.From) && IsPromised(spell.Until) ? from : null;
    }

    private bool IsPromised(Kind kind) => new PromiseReference(keeping, kind, farm.Known, farm.LatestEntry(kind)).Since is not null;

    private int? Latest(Func<Completeness, bool> which) => (keeping?.Complete ?? []).Where(which).Select(complete => (int?)DayNumber.Of(complete.Since)).Max();

    private static bool IsAgreed(Completeness complete) => complete is { Because: not null, Agreement: not null, Until: null };

    private static bool Has(Completeness complete, Kind kind) => complete.Kinds.Any(one => one.Id == kind.Id);

    private bool AnyPutIn(Spell spell, int day) =>
        farm.GroupEvents.Any(row => row.Kind.Id == spell.From.Id && row.Target is null && row.Day < day
            && !farm.GroupEvents.Any(end => end.Kind.Id == spell.Until.Id && end.Day >= row.Day && end.Day < day && (end.Mob == row.Mob || end.Mob is null)))
        || farm.Animals.Any(animal => farm.Presence.At(animal.Index, day) != Truth.False
            && farm.Of(animal.Index, spell.From).Any(row => !row.OfGroup && row.Day < day && !farm.Of(animal.Index, spell.Until).Any(end => end.Day >= row.Day && end.Day < day)));

    private bool AnyGrownMale(Spell spell, int day) => farm.Animals.Any(animal =>
        animal.IsFemale != true && !animal.IsSteer && farm.Presence.At(animal.Index, day) != Truth.False
        && (spell.WithMaleFrom is not { } age || animal.BornFirst is not { } born || Sums.After(age, born) <= day));
}
