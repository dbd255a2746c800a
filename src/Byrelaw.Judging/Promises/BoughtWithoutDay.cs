namespace Byrelaw.Judging.Promises;

/// <summary>
/// Animals that were bought, hired or came otherwise, by their row in <c>animals.csv</c>, and have no row that says when they came: what happened to them before may
/// be another farm's to know, so nothing is complete for them on any day.
/// </summary>
internal static class BoughtWithoutDay
{
    private const string Origin = "origin";
    private const string HomeBred = "home-bred";

    /// <summary>Their places.</summary>
    public static List<int> Find(Herd herd)
    {
        var found = new List<int>();
        if (herd.Vocabulary.FindFact(Origin) is not { Type: FactType.OneOf } origin)
        {
            return found;
        }

        var column = herd.Facts[origin.Id];
        int[] joins = [.. herd.Vocabulary.Kinds.Where(kind => kind is EventKind { Effect: HerdEffect.Joins }).Select(kind => kind.Id)];
        for (var animal = 0; animal < herd.Count; animal++)
        {
            // Of a bull nobody asks whether all is on record.
            if (herd.Sexes[animal] is not (Sex.Male or Sex.Steer) && MayBeBought(column, animal) && !Joined(herd, joins, animal))
            {
                found.Add(animal);
            }
        }

        return found;
    }

    /// <summary>What cannot be read may say so, and so may a value that the farm added: hired, leased, purchased.</summary>
    private static bool MayBeBought(FactColumn origin, int animal) => origin.States[animal] == FactState.Unreadable || (origin.States[animal] == FactState.Known && origin.Texts[animal] != HomeBred);

    /// <summary>What is said of them: that they were bought, or that nobody can read whether they were.</summary>
    public static IEnumerable<RowsInDoubt> Doubts(Herd herd, List<int> found)
    {
        var origin = herd.Facts[herd.Vocabulary.FindFact(Origin)!.Id];
        return found.GroupBy(animal => origin.States[animal] == FactState.Unreadable ? RowDoubt.OriginUnreadable : RowDoubt.BoughtWithoutDay).OrderBy(group => group.Key)
            .Select(group => new RowsInDoubt(group.Key, [.. group.Select(animal => new RowInDoubt(animal, Day.Start, herd.AnimalLines[animal], IsOfAnimals: true))]));
    }

    private static bool Joined(Herd herd, int[] joins, int animal)
    {
        foreach (var kind in joins)
        {
            if (herd.Runs[kind].DaysOf(animal).Length > 0)
            {
                return true;
            }
        }

        return false;
    }
}
