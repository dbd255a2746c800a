namespace Byrelaw.Judging.Tests.Reference;

/// <summary>Whether a mob has the company that makes a spell: a bull was put in it by a row, or a grown male is in it.</summary>
public sealed class MobCompanyReference(
    FarmAsRead farm, CoverageReference coverage, RecordKeeping? keeping, SpellEndsReference endings, OwnSpellReference own, WhereReference where)
{
    private readonly Dictionary<(string Spell, bool Strict, int Without), Dictionary<string, Truth[]>> _known = [];

    private readonly Dictionary<int, bool[]> _hidden = [];

    /// <summary>All mobs that any cell or move names, and the one of all whose cell is blank.</summary>
    public IReadOnlyList<string> Mobs { get; } = [.. farm.MobNames, WhereReference.Blank];

    /// <summary>The company of every mob, on each day from the first.</summary>
    /// <param name="spell">Which.</param>
    /// <param name="without">One of unknown sex is no company of its own; -1 for a female.</param>
    /// <param name="strict">Coverage stops at the known day.</param>
    public IReadOnlyDictionary<string, Truth[]> Of(Spell spell, int without, bool strict)
    {
        if (!_known.TryGetValue((spell.Name, strict, without), out var byMob))
        {
            _known[(spell.Name, strict, without)] = byMob = ByRows(spell, strict);
            foreach (var (from, his) in spell.WithMaleFrom is null ? [] : farm.StrangersMoves)
            {
                foreach (var one in his is not null && Mobs.Contains(his) ? [his] : Mobs)
                {
                    for (var each = from ?? coverage.Dawn; each <= coverage.Dusk; each++)
                    {
                        byMob[one][each - coverage.Dawn] = Kleene.Or(byMob[one][each - coverage.Dawn], Truth.Unknown);
                    }
                }
            }

            foreach (var (mate, each) in spell.WithMaleFrom is null ? [] : LetIn(spell, strict))
            {
                foreach (var one in where.MobsOn(mate, each, strict).SelectMany(hers => hers is null ? Mobs : hers == WhereReference.Blank ? [] : [hers]))
                {
                    byMob[one][each - coverage.Dawn] = Kleene.Or(byMob[one][each - coverage.Dawn], Truth.Unknown);
                }
            }

            foreach (var animal in farm.Animals.Where(animal => animal.IsFemale != true && !animal.IsSteer && animal.Index != without && spell.WithMaleFrom is not null))
            {
                for (var each = coverage.Dawn; each <= coverage.Dusk; each++)
                {
                    var runs = Runs(spell, animal, each, strict);
                    if (runs == Truth.False)
                    {
                        continue;
                    }

                    var (his, withNobody) = (where.MobsOn(animal.Index, each, strict).ToList(), WasLetInWithNobody(spell, animal, each, strict));
                    foreach (var one in Mobs)
                    {
                        ref var truth = ref byMob[one][each - coverage.Dawn];
                        truth = Kleene.Or(truth, Kleene.And(runs, IsOneOf(his, one)));
                        truth = withNobody ? Kleene.Or(truth, Truth.Unknown) : truth;
                    }
                }
            }
        }

        return byMob;
    }

    /// <summary>
    /// "A male's own `bull in` is his mob's"; a grown male in the mob is a bull. His own `bull out` takes him from every mob until his next
    /// move or `bull in`; on the day of it he is still with them.
    /// </summary>
    private Truth Runs(Spell spell, AnimalAsRead male, int day, bool strict)
    {
        var runs = own.On(spell, male.Index, day, strict);
        if (!where.IsWithout(male.Index, day) && runs != Truth.True)
        {
            runs = Kleene.Or(runs, Kleene.And(IsGrown(spell, male, day), Kleene.Not(IsTakenOut(spell, male.Index, day, strict))));
        }

        return Kleene.And(Kleene.And(male.IsFemale == false ? Truth.True : Truth.Unknown, farm.Presence.At(male.Index, day)), runs);
    }

    /// <summary>"His own `bull in` on a day on which no female is in his mob: with whom he ran from then on is not known, until he is out or moves."
    /// A row of his that cannot be read may be such a one; where its day cannot be read either, it is.</summary>
    private bool WasLetInWithNobody(Spell spell, AnimalAsRead male, int day, bool strict)
    {
        if (own.On(spell, male.Index, day, strict) == Truth.False)
        {
            return false;
        }

        var start = farm.Of(male.Index, spell.From).Where(row => !row.OfGroup && row.Day <= day).Select(row => (int?)row.Day).Max();
        return (start is { } put && IsWithNobody(put))
            || farm.Unread.Where(row => row.Animal == male.Index && row.MayBeA(spell.From) && (row.LostTo is not null || !row.OfGroup)).Any(row => row switch
            {
                { LostTo: { } to } => (row.LostFrom is not { } from || from <= day) && day <= to + 1 && IsWithNobody(to + 1),
                { Day: { } on } => on <= day && IsWithNobody(on),
                _ => true,
            });

        bool IsWithNobody(int put) => !where.MovesIn(male.Index, put + 1, day - 1) && where.On(male.Index, put, strict) is var mob
            && (mob is null || (mob != WhereReference.Blank && !farm.Animals.Any(other => IsFemaleIn(other, mob, put))));
    }

    /// <summary>"A `bull in` of one cow: he may run with her mob mates too", until a `bull out` of hers or of her mob. A row of that kind that cannot be read counts,
    /// and an end of hers without its start, readable or not; that a promise is missing does not, nor a row that may be anything, unless its word is spelt like that kind's.</summary>
    private IEnumerable<(int Animal, int Day)> LetIn(Spell spell, bool strict)
    {
        foreach (var animal in farm.Animals.Where(animal => animal.IsFemale == true).Select(animal => animal.Index))
        {
            var starts = farm.Of(animal, spell.From).Where(row => !row.OfGroup).Select(row => row.Day).ToList();
            var ends = farm.Of(animal, spell.Until).Select(row => row.Day).ToList();
            var unread = farm.Unread.Where(row => row.Animal == animal && row.IsSpeltLike(spell.From) && (row.LostTo is not null ? IsEndOfHers(row.Line) : !row.OfGroup)).ToList();
            for (var day = coverage.Dawn; day <= coverage.Dusk && starts.Count + unread.Count > 0; day++)
            {
                if (farm.Presence.At(animal, day) != Truth.False && own.On(spell, animal, day, strict) != Truth.False
                    && (starts.Exists(start => start <= day && !IsOver(start)) || unread.Exists(row => row.LostTo is { } to ? !(row.LostFrom > day) && day <= to + 1 : row.Day is not { } on || (on <= day && !IsOver(on)))))
                {
                    yield return (animal, day);
                }

                bool IsOver(int start) => ends.Exists(end => end > start && end < day);
            }

            bool IsEndOfHers(int line) => farm.Of(animal, spell.Until).Any(end => !end.OfGroup && end.Line == line)
                || farm.Unread.Any(end => end is { OfGroup: false, LostTo: null } && end.Animal == animal && end.IsSpeltLike(spell.Until) && end.Line == line);
        }
    }

    private bool IsFemaleIn(AnimalAsRead animal, string mob, int day) =>
        animal.IsFemale == true && farm.Presence.At(animal.Index, day) == Truth.True && farm.Mobs.At(animal.Index, day) == mob;

    private static Truth IsOneOf(List<string?> mobs, string mob)
    {
        var isIn = Truth.False;
        foreach (var his in mobs)
        {
            isIn = Kleene.Or(isIn, his is null ? Truth.Unknown : Kleene.Of(his == mob));
        }

        return isIn;
    }

    private static Truth IsGrown(Spell spell, AnimalAsRead male, int day) =>
        male.BornFirst is { } first && day < Sums.After(spell.WithMaleFrom!.Value, first) ? Truth.False
        : male.BornLast is { } last && day >= Sums.After(spell.WithMaleFrom!.Value, last) ? Truth.True
        : Truth.Unknown;

    private Truth IsTakenOut(Spell spell, int male, int day, bool strict)
    {
        var outs = farm.Of(male, spell.Until).Where(row => !row.OfGroup && row.Day < day).Select(row => row.Day).ToList();
        return outs.Count == 0 || farm.Of(male, spell.From).Any(row => !row.OfGroup && row.Day >= outs[^1] && row.Day <= day) || where.MovesIn(male, outs[^1] + 1, day) ? Truth.False
            : where.IsKept(male, outs[^1] + 1, day, strict) ? Truth.True
            : Truth.Unknown;
    }

    /// <summary>
    /// By rows of the mob or the herd. Two starts may be two bulls, or one written twice; the herd's end ends all. Kept is how many may run.
    /// A mob that moves takes them along; "if somebody stays or may stay", both may have them.
    /// </summary>
    private Dictionary<string, Truth[]> ByRows(Spell spell, bool strict)
    {
        var truths = Mobs.ToDictionary(mob => mob, _ => new Truth[coverage.Dusk - coverage.Dawn + 1]);
        var running = Mobs.ToDictionary(mob => mob, _ => new HashSet<int> { 0 });
        var astray = new HashSet<string>();
        var byDay = farm.GroupEvents.ToLookup(row => row.Day);
        for (var day = coverage.Dawn; day <= coverage.Dusk; day++)
        {
            var today = new Dictionary<string, Truth>();
            var rowsOfDay = byDay[day].ToList();
            foreach (var mob in Mobs)
            {
                (today[mob], running[mob]) = Day(rowsOfDay, spell, mob, day, strict, running[mob]);
            }

            foreach (var move in rowsOfDay.Where(row => row.Target is not null))
            {
                foreach (var mob in Mobs.Where(mob => (move.Mob ?? mob) == mob && mob != move.Target && today[mob] != Truth.False))
                {
                    var all = !farm.Animals.Any(animal => Stays(animal.Index, mob, day));
                    today[move.Target!] = Kleene.Or(today[move.Target!], all ? today[mob] : Truth.Unknown);
                    // What both have may be one bull, written for the whole herd, or two.
                    var together = running[move.Target!].SelectMany(there => running[mob].SelectMany(here => Enumerable.Range(Math.Max(here, there), Math.Min(here, there) + 1))).ToHashSet();
                    running[move.Target!] = all ? together : [.. running[move.Target!], .. together];
                    running[mob] = all ? [0] : [0, .. running[mob]];
                    astray.UnionWith(astray.Contains(mob) ? [move.Target!] : []);
                }
            }

            FollowLast(day, today, running, astray);
            foreach (var mob in Mobs)
            {
                truths[mob][day - coverage.Dawn] = astray.Count > 0 ? Kleene.Or(today[mob], Truth.Unknown) : today[mob];
                running[mob] = endings.EndsAll(spell, day) ? [0] : running[mob];
            }

            astray.RemoveWhere(mob => running[mob].Max() == 0);
        }

        return truths;
    }

    /// <summary>
    /// "When the last females of a mob have gone by a row for each, its bull may have gone where they went, or stayed." One whose mob nobody knows may be of
    /// any. "Where no female surely is with him and one may have gone anywhere, he may be in any mob until he is taken out of his."
    /// </summary>
    private void FollowLast(int day, Dictionary<string, Truth> today, Dictionary<string, HashSet<int>> running, HashSet<string> astray)
    {
        var before = Mobs.ToDictionary(mob => mob, mob => running[mob].Max());
        if (before.Values.All(most => most == 0))
        {
            return;
        }

        var females = farm.Animals.Where(animal => animal.IsFemale == true && farm.Presence.At(animal.Index, day) != Truth.False).Select(animal => animal.Index).ToList();
        foreach (var mob in farm.MobNames.Where(mob => before[mob] > 0 && !farm.Animals.Any(animal => IsFemaleIn(animal, mob, day))))
        {
            var targets = females.Where(animal => farm.Presence.At(animal, day - 1) != Truth.False && (farm.Mobs.At(animal, day - 1) ?? mob) == mob)
                .Select(animal => farm.Mobs.At(animal, day)).Where(target => target is not null && target != mob).Distinct().ToList();
            var isAstray = females.Exists(animal => farm.Mobs.MayBeAnywhere(animal, day));
            running[mob] = targets.Count > 0 || isAstray ? [0, .. running[mob]] : running[mob];
            astray.UnionWith(isAstray ? [mob] : []);
            foreach (var target in targets)
            {
                today[target!] = Kleene.Or(today[target!], Truth.Unknown);
                running[target!] = [.. running[target!].SelectMany(there => Enumerable.Range(there, before[mob] + 1))];
            }
        }
    }

    private bool Stays(int animal, string mob, int day) => farm.Presence.At(animal, day) != Truth.False
        && (farm.Mobs.At(animal, day) is { } now ? now == mob : farm.Mobs.At(animal, day - 1) == mob);

    private (Truth Today, HashSet<int> After) Day(List<GroupEvent> rowsOfDay, Spell spell, string mob, int day, bool strict, HashSet<int> before)
    {
        var rows = rowsOfDay.Where(row => row.Mob is null || row.Mob == mob).ToList();
        var starts = rows.Count(row => row.Kind.Id == spell.From.Id);
        var unread = day > farm.Known ? 0 : farm.Unread.Count(row => row.Animal is null && !row.OfGroup && row.MayBeA(spell.From) && row.Day == day);
        var ends = rows.Where(row => row.Kind.Id == spell.Until.Id).ToList();
        var today = new HashSet<bool>();
        var after = new HashSet<int>();
        foreach (var was in before)
        {
            foreach (var start in starts > 0 ? [true] : MayHide(spell.From, false, day, strict) ? [false, true] : new[] { false })
            {
                foreach (var end in ends.Count > 0 ? [true] : (was > 0 || start) && MayHide(spell.Until, true, day, strict) ? [false, true] : new[] { false })
                {
                    today.Add(was > 0 || start || end);
                    // Nobody wrote it down: of several that may be hidden, one is enough. Written: another bull, or the same again; so each row that cannot be read.
                    var put = starts > 0 ? starts + unread : start ? Math.Max(unread, was == 0 ? 1 : 0) : 0;
                    if (start && end)
                    {
                        after.UnionWith(Enumerable.Range(was, Math.Max(put, 1)));
                    }
                    else if (end)
                    {
                        after.Add(ends.Count == 0 || ends.Exists(row => row.Mob is null) ? 0 : Math.Max(was - 1, 0));
                    }
                    else
                    {
                        after.UnionWith(Enumerable.Range(start ? Math.Max(was, 1) : was, Math.Max(start && was == 0 ? put : put + 1, 1)));
                    }
                }
            }
        }

        return (today.Count > 1 ? Truth.Unknown : Kleene.Of(today.Single()), after);
    }

    /// <summary>
    /// Whether one may have happened to a mob, unrecorded: a row of nobody known, or of a mob that cannot be read. That a bull was in before the
    /// farm promised anything is for each animal that was there to answer, not for the mob.
    /// </summary>
    private bool MayHide(Kind kind, bool isEnd, int day, bool strict)
    {
        if (day > farm.Known)
        {
            return strict;
        }

        if (!_hidden.TryGetValue(kind.Id, out var days))
        {
            var promise = new PromiseReference(keeping, kind, farm.Known, farm.LatestEntry(kind));
            var rows = farm.Unread.Where(row => row.Animal is null && !row.OfGroup && row.MayBeA(kind)).ToList();
            _hidden[kind.Id] = days = [.. Enumerable.Range(coverage.Dawn, farm.Known - coverage.Dawn + 1).Select(one =>
                rows.Exists(row => row.MayBeIn(one, one)) || (promise.Since is not { } since || one < since ? isEnd : !promise.Holds(one)))];
        }

        return days[day - coverage.Dawn];
    }
}
