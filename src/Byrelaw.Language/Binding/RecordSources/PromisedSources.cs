namespace Byrelaw.Language.Binding.RecordSources;

/// <summary>Whether the sources of a farm can hold all of what it promises.</summary>
internal static class PromisedSources
{
    /// <summary>A promise is only as good as where it is kept: a kind that no source can give, or only one that holds a single entry for
    /// each animal, cannot be complete.</summary>
    public static bool Hold(Context context, Completeness promise, PromiseLine line, ImmutableArray<RecordSource> sources)
    {
        if (sources.IsEmpty || promise.IsNone)
        {
            return true;
        }

        var count = context.Problems.Count;
        var kinds = context.AllKinds().ToList();
        foreach (var name in line.Kinds)
        {
            if (context.Names.Find(name.Text) is not KindSymbol { Kind: var kind })
            {
                continue;
            }

            RecordSource[] giving = [.. sources.Where(source => SourceKinds.Of(source, sources, kinds).Any(given => given is null || given.Id == kind.Id))];
            if (!Array.Exists(giving, source => source.Rows == SourceRows.Events || source.IsBroken))
            {
                context.Problems.Add(SourceProblems.CannotBeComplete(name.Span, kind.Name, giving.Length > 0));
            }
        }

        return context.Problems.Count == count;
    }
}
