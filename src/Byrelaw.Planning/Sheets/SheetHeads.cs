namespace Byrelaw.Planning.Sheets;

/// <summary>What stands at the head of a sheet: whom to take as in calf that morning, how far the records reach; and who its animals are.</summary>
internal sealed class SheetHeads(Plan plan)
{
    private readonly Dictionary<LocalDate, InCalfOnDay> _inCalf = [];
    private readonly Dictionary<int, AnimalSort> _sorts = plan.Sessions.SelectMany(session => session.Session.Lists).SelectMany(list => list.Animals)
        .GroupBy(animal => animal.Animal).ToDictionary(group => group.Key, group => group.First().Sort);

    private readonly Dictionary<string, LocalDate?> _reach = new(StringComparer.Ordinal);

    /// <summary>Whom the floor holds back that morning. It asks the same on every list and in every session.</summary>
    public InCalfOnDay InCalf(LocalDate day)
    {
        if (!_inCalf.TryGetValue(day, out var known))
        {
            known = _inCalf[day] = InCalfOnDay.Of(plan.Sessions[0].Session, day);
        }

        return known;
    }

    /// <summary>How far all reaches that the safety rules of a list look at.</summary>
    public LocalDate? Reach(Choice? list)
    {
        var name = list?.List ?? "";
        if (!_reach.TryGetValue(name, out var known))
        {
            known = _reach[name] = SafetyReach.Of(plan.Draft.Rulebook, plan.Draft.Herd, name);
        }

        return known;
    }

    /// <summary>An animal as she stands on a sheet.</summary>
    public SheetAnimal Animal(int animal) => new(animal, plan.Draft.Herd.Numbers[animal], _sorts.TryGetValue(animal, out var sort) ? sort : null);
}
