using Byrelaw.Language.Binding.RecordSources;

namespace Byrelaw.Language.Binding.Farm;

/// <summary>Binds what a farm says about its records. If any line of it is broken, nothing counts as complete.</summary>
internal static class RecordsBinder
{
    /// <summary>Binds; null where the first line could not be read. What was agreed after <paramref name="knownOn"/> does not exist.</summary>
    public static RecordKeeping? Bind(Context context, Block block, ImmutableArray<Block> sources, LocalDate? knownOn, LocalDate? today)
    {
        var bound = SourceBinder.Bind(context, sources);
        var complete = Complete(context, block, bound)?.RemoveAll(promise => promise.Agreement?.On > knownOn);
        var leaveOut = LeaveOut(context, block);
        var compared = ComparedNumbersBinder.Bind(context, block).RemoveAll(one => one.Agreement.On > knownOn);
        var upTo = block.First<UpToLine>()?.Day;
        if (upTo?.Value > today)
        {
            context.Problems.Add(FarmProblems.UpToBeyondToday(upTo!.Span, today!.Value));
            upTo = null;
        }

        return block.Head is RecordsLine head
            ? new RecordKeeping(
                head.Folder?.Value ?? "", upTo?.Value,
                block.IsBroken || complete is null ? [] : complete.Value, leaveOut, block.Span)
            { Compared = compared, Blanks = BlanksBinder.Bind(context, block), Sources = bound, Today = today }
            : null;
    }

    private static ImmutableArray<Completeness>? Complete(Context context, Block block, ImmutableArray<RecordSource> sources)
    {
        var promises = new List<Completeness>();
        var isWhole = true;
        for (var i = 0; i < block.Lines.Count; i++)
        {
            if (block.Lines[i] is not PromiseLine line)
            {
                continue;
            }

            if (Promise(context, line, Below(block, i)) is { } promise && Fits(context, promise, promises, line) && PromisedSources.Hold(context, promise, line, sources))
            {
                promises.Add(promise);
            }
            else
            {
                isWhole = false;
            }
        }

        return isWhole ? [.. promises] : null;
    }

    /// <summary>The reason and the agreement that stand below a line.</summary>
    internal static List<BodyLine> Below(Block block, int line) => [.. block.Lines.Skip(line + 1).TakeWhile(below => below is BecauseLine or AgreedByLine)];

    private static Completeness? Promise(Context context, PromiseLine line, List<BodyLine> below)
    {
        var agreed = below.OfType<AgreedByLine>().FirstOrDefault();
        return context.Kinds(line.Kinds) is not { } kinds ? null : new Completeness(kinds, line.Since?.Value ?? Completeness.Always, line.Span)
        {
            Until = (line as CompleteForLine)?.Until?.Value,
            IsNone = line is NoneOnFarmLine,
            Because = below.OfType<BecauseLine>().FirstOrDefault()?.Reason.Value,
            Agreement = agreed is null ? null : new Agreement([.. agreed.By.Select(by => by.Value)], agreed.On.Value),
        };
    }

    /// <summary>Whether a promise has days, and shares none with another of the same kind.</summary>
    private static bool Fits(Context context, Completeness promise, List<Completeness> others, PromiseLine line)
    {
        var count = context.Problems.Count;
        if (promise.Until < promise.Since)
        {
            context.Problems.Add(FarmProblems.UntilBeforeSince(((CompleteForLine)line).Until!.Span));
        }

        var seen = new HashSet<Kind>();
        foreach (var name in line.Kinds)
        {
            if (context.Names.Find(name.Text) is not KindSymbol { Kind: var kind })
            {
                continue;
            }

            if (!seen.Add(kind) || others.Find(other => other.Kinds.Contains(kind) && Meet(other, promise)) is not null)
            {
                context.Problems.Add(FarmProblems.CompleteTwice(name.Span, kind.Name));
            }
        }

        return context.Problems.Count == count;
    }

    private static bool Meet(Completeness a, Completeness b) => !(a.Until < b.Since) && !(b.Until < a.Since);

    private static ImmutableArray<LeftOut> LeaveOut(Context context, Block block)
    {
        var left = new List<LeftOut>();
        foreach (var line in block.Lines.OfType<LeaveOutLine>())
        {
            var isNot = line.IsNot is { } named ? context.Kinds([named]) is { } kinds ? kinds[0] : null : null;
            foreach (var name in line.Names)
            {
                if (context.Names.Find(name.Text) is KindSymbol { Kind: var kind } found)
                {
                    context.Problems.Add(FarmProblems.LeftOutButDeclared(name.Span, kind.Name, found.Declared));
                }
                else
                {
                    left.Add(new LeftOut(name.Text, isNot, name.Span));
                }
            }
        }

        return [.. left.DistinctBy(word => NameFolding.Fold(word.Word))];
    }
}
