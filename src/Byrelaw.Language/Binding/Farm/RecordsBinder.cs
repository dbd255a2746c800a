namespace Byrelaw.Language.Binding.Farm;

/// <summary>Binds what a farm says about its records. If any line of it is broken, nothing counts as complete.</summary>
internal static class RecordsBinder
{
    /// <summary>Binds; null where the first line could not be read.</summary>
    public static RecordKeeping? Bind(Context context, Block block)
    {
        var complete = Complete(context, block);
        var leaveOut = LeaveOut(context, block);
        return block.Head is RecordsLine head
            ? new RecordKeeping(
                head.Folder?.Value ?? "", block.First<UpToLine>()?.Day.Value,
                block.IsBroken || complete is null ? [] : complete.Value, leaveOut, block.Span)
            : null;
    }

    private static ImmutableArray<Completeness>? Complete(Context context, Block block)
    {
        var complete = ImmutableArray.CreateBuilder<Completeness>();
        var seen = new HashSet<Kind>();
        var isWhole = true;
        foreach (var line in block.Lines.OfType<CompleteForLine>())
        {
            var count = context.Problems.Count;
            foreach (var name in line.Kinds)
            {
                if (context.Names.Find(name.Text) is KindSymbol { Kind: var kind } && !seen.Add(kind))
                {
                    context.Problems.Add(FarmProblems.CompleteTwice(name.Span, kind.Name));
                }
            }

            if (context.Kinds(line.Kinds) is { } kinds && context.Problems.Count == count)
            {
                complete.Add(new Completeness(kinds, line.Since.Value, line.Span));
            }
            else
            {
                isWhole = false;
            }
        }

        return isWhole ? complete.ToImmutable() : null;
    }

    private static ImmutableArray<string> LeaveOut(Context context, Block block)
    {
        var names = new List<NameSyntax>();
        foreach (var name in block.Lines.OfType<LeaveOutLine>().SelectMany(line => line.Names))
        {
            if (context.Names.Find(name.Text) is KindSymbol { Kind: var kind } found)
            {
                context.Problems.Add(FarmProblems.LeftOutButDeclared(name.Span, kind.Name, found.Declared));
            }
            else
            {
                names.Add(name);
            }
        }

        return [.. names.Select(name => name.Text).DistinctBy(NameFolding.Fold)];
    }
}
