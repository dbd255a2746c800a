using Byrelaw.Records.Doubts;

namespace Byrelaw.Judging.Promises;

/// <summary>Animals whose parity speaks against their calvings: which of the two is wrong nobody can tell, so neither is believed.</summary>
internal static class ParityDoubts
{
    /// <summary>Their places.</summary>
    public static List<int> Find(Herd herd)
    {
        var found = new List<int>();
        for (var animal = 0; animal < herd.Count; animal++)
        {
            if (ParityAgainstCalvings.IsTooHigh(herd, animal))
            {
                found.Add(animal);
            }
        }

        return found;
    }

    /// <summary>Calvings are not known of them on any day.</summary>
    public static IEnumerable<Hole> Holes(Herd herd, List<int> found) => found.Select(animal => new Hole(animal, herd.Vocabulary.Calving!.Id, Day.Start, Day.End, IsDoubt: true));

    /// <summary>By animal of the herd.</summary>
    public static bool[] Marks(Herd herd, List<int> found)
    {
        var marks = new bool[herd.Count];
        found.ForEach(animal => marks[animal] = true);
        return marks;
    }

    /// <summary>What is said of them.</summary>
    public static IEnumerable<Doubted> Doubts(Herd herd, List<int> found)
    {
        ImmutableArray<int> unreadable = [.. found.Where(animal => ParityAgainstCalvings.IsUnreadable(herd, animal))];
        ImmutableArray<int> high = [.. found.Except(unreadable)];
        if (!high.IsEmpty)
        {
            yield return new ParityTooHigh(high);
        }

        if (!unreadable.IsEmpty)
        {
            yield return new RowsInDoubt(RowDoubt.ParityUnreadable, [.. unreadable.Select(animal => new RowInDoubt(animal, Day.Start, herd.AnimalLines[animal], IsOfAnimals: true))]);
        }
    }

    /// <summary>The herd in which they are doubted, and nothing else is.</summary>
    public static Herd Laid(Herd herd)
    {
        var found = Find(herd);
        return found.Count == 0 ? herd : herd.With(
            herd.Coverage.With(herd.Coverage.Since, herd.Coverage.Reach, [.. herd.Coverage.Holes, .. Holes(herd, found)]), Marks(herd, found));
    }
}
