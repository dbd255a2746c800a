namespace Byrelaw.Records.Events;

/// <summary>A column of <c>events.csv</c> that holds a detail of one or more kinds.</summary>
/// <param name="Name">Its folded name.</param>
/// <param name="Cell">Where it stands; -1 where it stands twice, so that neither is read.</param>
/// <param name="DetailOf">By kind id: the place among the kind's details; -1 where the kind has none of this name.</param>
internal sealed record DetailColumn(string Name, int Cell, int[] DetailOf)
{
    /// <summary>The names that such columns may have.</summary>
    public static IEnumerable<string> Names(Vocabulary vocabulary) =>
        vocabulary.Kinds.SelectMany(kind => kind.Details).Select(detail => NameFolding.Fold(detail.Name)).Distinct(StringComparer.Ordinal);

    /// <summary>Those that a heading has.</summary>
    public static ImmutableArray<DetailColumn> Of(Vocabulary vocabulary, ColumnMap map) =>
    [
        .. from name in Names(vocabulary)
           where map[name] >= 0 || map.IsDoubled(name)
           select new DetailColumn(name, map[name], [.. vocabulary.Kinds.Select(kind => Place(kind, name))]),
    ];

    private static int Place(Kind kind, string name)
    {
        for (var place = 0; place < kind.Details.Length; place++)
        {
            if (NameFolding.Fold(kind.Details[place].Name) == name)
            {
                return place;
            }
        }

        return -1;
    }
}
