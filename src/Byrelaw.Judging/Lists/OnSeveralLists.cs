namespace Byrelaw.Judging.Lists;

/// <summary>Marks animals that may be used on two lists at once: a caution on both.</summary>
public static class OnSeveralLists
{
    /// <summary>The lists of one programme and session, marked anew.</summary>
    public static ImmutableArray<ListJudgement> Mark(ImmutableArray<ListJudgement> lists)
    {
        var listsOf = new Dictionary<int, List<string>>();
        foreach (var list in lists)
        {
            foreach (var animal in list.Animals)
            {
                if (animal.Answer.MayBeUsed())
                {
                    if (!listsOf.TryGetValue(animal.Animal, out var own))
                    {
                        listsOf[animal.Animal] = own = [];
                    }

                    own.Add(list.Choice.List);
                }
            }
        }

        return [.. lists.Select(list => list with
        {
            Animals = [.. list.Animals.Select(animal =>
                animal with { AlsoReadyOn = animal.Answer.MayBeUsed() ? [.. listsOf[animal.Animal].Where(other => other != list.Choice.List)] : [] })],
        })];
    }
}
