namespace Byrelaw.Planning.Recipients;

/// <summary>The animals that a list offers.</summary>
/// <param name="Ready">May be used.</param>
/// <param name="OnCourse">May be, if nothing happens until then.</param>
/// <param name="Asked">May be, if what is not known turns out well.</param>
/// <param name="KeptForTheirStanding">Kept back by nothing but their standing: the herd's best, whose own calves are wanted.</param>
public sealed record OnHand(int Ready, int OnCourse, int Asked, int KeptForTheirStanding)
{
    /// <summary>Ready and On course.</summary>
    public int Animals => Ready + OnCourse;

    /// <summary>Of so many animals, how many are there.</summary>
    public Supply Supply(int wanted)
    {
        var tooFew = Math.Max(wanted - Animals, 0);
        return new(wanted, Math.Min(wanted, Animals), Math.Min(tooFew, KeptForTheirStanding), Math.Max(tooFew - KeptForTheirStanding, 0));
    }

    /// <summary>Counts a list.</summary>
    public static OnHand Of(ListStanding list)
    {
        ArgumentNullException.ThrowIfNull(list);
        return new(list.Count(Answer.Ready), list.Count(Answer.OnCourse), list.Count(Answer.Ask), list.Animals.Count(animal => animal.IsKeptForHerStanding));
    }
}

/// <summary>Where the animals wanted come from.</summary>
/// <param name="Wanted">To treat or watch.</param>
/// <param name="FromTheList">Ready or On course.</param>
/// <param name="FromTheBest">Would have to be taken from those kept back for their standing.</param>
/// <param name="Missing">Are not there at all.</param>
public sealed record Supply(int Wanted, int FromTheList, int FromTheBest, int Missing)
{
    /// <summary>Whether the list has them all.</summary>
    public bool IsEnough => FromTheList == Wanted;
}
