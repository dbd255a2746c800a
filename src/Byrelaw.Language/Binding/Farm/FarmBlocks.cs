namespace Byrelaw.Language.Binding.Farm;

/// <summary>The blocks that only a farm's own file may hold, each once.</summary>
/// <param name="Programme">Null for none.</param>
/// <param name="Records">Null for none.</param>
/// <param name="Sources">The sources of the records, in their order.</param>
internal sealed record FarmBlocks(Block? Programme, Block? Records, ImmutableArray<Block> Sources)
{
    /// <summary>Finds them, and says where one stands that may not.</summary>
    public static FarmBlocks Find(IReadOnlyList<RuleFile> files)
    {
        var records = Only(files, BlockKind.Records, "records");
        return new(Only(files, BlockKind.Programme, "programme"), records, Below(files, records));
    }

    /// <summary>The sources below <c>records</c>.</summary>
    private static ImmutableArray<Block> Below(IReadOnlyList<RuleFile> files, Block? records)
    {
        var sources = ImmutableArray.CreateBuilder<Block>();
        foreach (var file in files)
        {
            var isBelow = false;
            foreach (var block in file.Blocks)
            {
                if (block.Kind != BlockKind.Source)
                {
                    isBelow = block == records || (isBelow && block.Kind == BlockKind.Unreadable);
                }
                else if (isBelow)
                {
                    sources.Add(block);
                }
                else
                {
                    file.Problems.Add(SourceProblems.NotBelowRecords(block.Span));
                }
            }
        }

        return sources.ToImmutable();
    }

    private static Block? Only(IReadOnlyList<RuleFile> files, BlockKind kind, string what)
    {
        Block? first = null;
        foreach (var file in files)
        {
            foreach (var block in file.Blocks.Where(block => block.Kind == kind))
            {
                if (!file.IsRoot)
                {
                    file.Problems.Add(FileProblems.UsedFileHolds(block.Span, what));
                }
                else if (first is not null)
                {
                    file.Problems.Add(FarmProblems.SecondBlock(block.Span, what, first.Span));
                }
                else
                {
                    first = block;
                }
            }
        }

        return first;
    }
}
