namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// "Joining the herd ends every spell: the day she joins is its last possible day. `no bull in on this farm since D` says that no spell runs
/// on D either: D-1 is the last possible day. Where start and end are promised since D with `because` and `agreed by`, and no male of 6
/// months is on record then, likewise." As many bulls as were put in on record and not taken out are in: the promise
/// does not take them out, nor one who may have been put in by a row that cannot be read.
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

    private bool AnyPutIn(Spell spell, int day)
    {
        var unread = farm.Unread.Where(row => row is { OfGroup: false, IsOfDetails: false, LostTo: null, SheetTo: null } && row.MayBeA(spell.From)).ToList();
        return farm.MobNames.Append(null).Any(mob => AnyLeft(
                farm.GroupEvents.Where(row => row.Target is null && (row.Mob is null || row.Mob == mob)).Select(row => (row.Day, row.Kind, OfHerd: row.Mob is null)), unread.Where(row => row.Animal is null)))
            || farm.Animals.Any(animal => farm.Presence.At(animal.Index, day) != Truth.False && AnyLeft(
                farm.Of(animal.Index, spell.From).Where(row => !row.OfGroup).Concat(farm.Of(animal.Index, spell.Until))
                    .Select(row => (row.Day, row.Kind, OfHerd: farm.GroupEvents.Any(herds => herds.Mob is null && herds.Kind.Id == row.Kind.Id && herds.Day == row.Day))), unread.Where(row => row.Animal == animal.Index && row.Kind is not null)));

        // "Two starts may be two bulls; one end takes one, the herd's takes all. After a day with both it is as before."
        bool AnyLeft(IEnumerable<(int Day, Kind Kind, bool OfHerd)> rows, IEnumerable<Unread> others)
        {
            var left = 0;
            var puts = others.Select(row => row.Day ?? int.MinValue).ToList();
            var read = rows.Where(row => row.Kind.Id == spell.From.Id || row.Kind.Id == spell.Until.Id).ToList();
            foreach (var one in read.Select(row => row.Day).Concat(puts).Where(one => one < day).Distinct().Order())
            {
                var put = read.Count(row => row.Day == one && row.Kind.Id == spell.From.Id) + puts.Count(on => on == one);
                var takes = read.Where(row => row.Day == one && row.Kind.Id == spell.Until.Id).ToList();
                left = takes.Count == 0 ? left + put : put > 0 ? left + put - 1 : takes.Exists(row => row.OfHerd) ? 0 : Math.Max(left - 1, 0);
            }

            return left > 0;
        }
    }

    private bool AnyGrownMale(Spell spell, int day) => farm.Animals.Any(animal =>
        animal.IsFemale != true && !animal.IsSteer && farm.Presence.At(animal.Index, day) != Truth.False
        && (spell.WithMaleFrom is not { } age || animal.BornFirst is not { } born || Sums.After(age, born) <= day));
}
