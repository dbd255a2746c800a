namespace Byrelaw.Records.Sources;

/// <summary>Which kinds of record a source can give.</summary>
internal static class SourceKinds
{
    /// <summary>The kinds that its lines name; with a column of kinds, or where its lines cannot be read, also what no other source names. A null stands for all of them.</summary>
    public static IEnumerable<Kind?> Of(RecordSource source, ImmutableArray<RecordSource> all, Vocabulary vocabulary)
    {
        if (source.IsBroken)
        {
            return [null];
        }

        var named = Named(source).ToHashSet();
        if (source.Columns.Any(column => column.What is LandedTarget { Column: "kind" }))
        {
            var elsewhere = all.Where(other => other != source).SelectMany(Named).ToHashSet();
            named.UnionWith(vocabulary.Kinds.Where(kind => !elsewhere.Contains(kind.Id)).Select(kind => kind.Id));
        }

        return vocabulary.Kinds.Where(kind => named.Contains(kind.Id));
    }

    private static IEnumerable<int> Named(RecordSource source)
    {
        foreach (var column in source.Columns)
        {
            if (column.What is KindTarget { Kind: var own })
            {
                yield return own.Id;
            }

            foreach (var cell in column.Cells)
            {
                if (cell.Is is IsKind { Kind: var said })
                {
                    yield return said.Id;
                }
            }
        }
    }
}
