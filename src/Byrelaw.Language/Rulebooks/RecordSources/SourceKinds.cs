namespace Byrelaw.Language.Rulebooks.RecordSources;

/// <summary>Which kinds of record a source can give.</summary>
public static class SourceKinds
{
    /// <summary>The kinds that its lines name; with a column of kinds, or where its lines cannot be read, also what no other source names. A null stands for all of them.</summary>
    /// <param name="source">The source.</param>
    /// <param name="all">All sources of the farm.</param>
    /// <param name="kinds">All kinds that are declared.</param>
    public static IEnumerable<Kind?> Of(RecordSource source, ImmutableArray<RecordSource> all, IEnumerable<Kind> kinds)
    {
        ArgumentNullException.ThrowIfNull(source);
        if (source.IsBroken)
        {
            return [null];
        }

        var named = Named(source, kinds).ToHashSet();
        // Messages are read where a line names what they say, and passed over else.
        if (!source.IsAde && source.Columns.Any(column => column.What is LandedTarget { Column: "kind" }))
        {
            var elsewhere = all.Where(other => other != source).SelectMany(other => Named(other, kinds)).ToHashSet();
            named.UnionWith(kinds.Where(kind => !elsewhere.Contains(kind.Id)).Select(kind => kind.Id));
        }

        return kinds.Where(kind => named.Contains(kind.Id));
    }

    private static IEnumerable<int> Named(RecordSource source, IEnumerable<Kind> kinds)
    {
        foreach (var every in source.EveryRow)
        {
            if (every.What is LandedTarget { Column: "kind" } && kinds.FirstOrDefault(kind => kind.Name == every.Value) is { } always)
            {
                yield return always.Id;
            }
        }

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
