namespace Byrelaw.Language.Binding.Farm;

/// <summary>The blocks that only a farm's own file may hold, each once.</summary>
/// <param name="Programme">Null for none.</param>
/// <param name="Records">Null for none.</param>
internal sealed record FarmBlocks(Block? Programme, Block? Records)
{
    /// <summary>Finds them, and says where one stands that may not.</summary>
    public static FarmBlocks Find(IReadOnlyList<RuleFile> files) =>
        new(Only(files, BlockKind.Programme, "programme"), Only(files, BlockKind.Records, "records"));

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
