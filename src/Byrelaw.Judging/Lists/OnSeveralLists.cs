namespace Byrelaw.Judging.Lists;

/// <summary>Marks animals that may be used on two lists at once: a caution on both.</summary>
internal static class OnSeveralLists
{
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
                animal.Answer.MayBeUsed() && listsOf[animal.Animal].Count > 1
                    ? animal with { AlsoReadyOn = [.. listsOf[animal.Animal].Where(other => other != list.Choice.List)] }
                    : animal)],
        })];
    }
}
