namespace Byrelaw.Workshop.Tidying.Written;

/// <summary>A rule file as it stands: its statements in blocks, with every comment where it belongs.</summary>
/// <param name="Blocks">In order.</param>
/// <param name="AtEnd">Comments after the last block that do not belong to it.</param>
internal sealed record WrittenFile(IReadOnlyList<WrittenBlock> Blocks, IReadOnlyList<Comment> AtEnd)
{
    /// <summary>Takes a file that was read without errors.</summary>
    /// <param name="file">The file.</param>
    /// <param name="parts">The reading that it is part of: the declared names of all files.</param>
    public static WrittenFile Of(RuleFile file, ReadParts parts) => new WrittenFileReader(file, parts).Read();

    /// <summary>Every statement, in order.</summary>
    public IEnumerable<Statement> Statements => Blocks.SelectMany(block => block.Body.Prepend(block.Head));

    /// <summary>Every comment, in order.</summary>
    public IEnumerable<Comment> Comments => Blocks
        .SelectMany(block => block.Body.Prepend(block.Head).SelectMany(statement => statement.Comments).Concat(block.Below))
        .Concat(AtEnd);
}
