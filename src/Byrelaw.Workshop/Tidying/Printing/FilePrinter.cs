namespace Byrelaw.Workshop.Tidying.Printing;

/// <summary>Prints a file the one way: its blocks in their order, with an empty line between.</summary>
internal sealed class FilePrinter
{
    private const int Body = 2;
    private const int Bullet = 4;

    private readonly PrintedLines _page = new();

    private FilePrinter()
    {
    }

    /// <summary>The whole text; empty for a file without statements and comments.</summary>
    /// <param name="file">The file as it stands.</param>
    public static string Print(WrittenFile file)
    {
        var printer = new FilePrinter();
        var heads = Heads(file.Blocks);
        for (var i = 0; i < file.Blocks.Count; i++)
        {
            if (i > 0 && !StandTogether(file.Blocks[i - 1], file.Blocks[i]) && !file.Blocks[i].Head.IsParted)
            {
                printer._page.Blank();
            }

            printer.Print(file.Blocks[i], heads[i]);
        }

        printer.Print(file.AtEnd, indent: 0, keepsBlanks: true);
        return printer._page.ToString();
    }

    /// <summary>Whether no empty line is needed between two blocks: declarations, <c>use</c> lines, assumptions with their sources, or
    /// sources of records, which stand inside <c>records</c>.</summary>
    private static bool StandTogether(WrittenBlock upper, WrittenBlock lower) =>
        lower.Kind == BlockKind.Source ? upper.Kind is BlockKind.Records or BlockKind.Source : upper.Kind == lower.Kind && ((upper.IsOneLine && lower.IsOneLine) || upper.Kind == BlockKind.Assume);

    /// <summary>How the blocks' first lines are set; declarations that no empty line parts line up.</summary>
    private static List<Layout> Heads(IReadOnlyList<WrittenBlock> blocks)
    {
        var heads = blocks.Select(block => StatementPrinter.Print(block.Head)).ToList();
        for (var (start, end) = (0, 0); start < heads.Count; start = end)
        {
            for (end = start + 1; end < heads.Count && heads[start] is Row && heads[end] is Row && !blocks[end].Head.IsParted;)
            {
                end++;
            }

            if (heads[start] is Row)
            {
                var lines = Columns.Align([.. heads[start..end].Cast<Row>()]);
                lines.ForEach(line => heads[start++] = new OneLine(line));
            }
        }

        return heads;
    }

    private void Print(WrittenBlock block, Layout head)
    {
        var isSource = block.Kind == BlockKind.Source;
        Print(block.Head, head, indent: isSource ? Body : 0, keepsBlanks: true);
        var keepsBlanks = false;
        foreach (var line in LineOrder.Of(block))
        {
            // A line of `records` itself ends the source above it.
            isSource &= !LineTable.GoesOnWithRecords(line.Line);
            var indent = (IsUnderALine(line, isSource || block.Kind != BlockKind.Source ? block.Kind : BlockKind.Records) ? Bullet : Body) + (isSource ? Body : 0);
            Print(line, StatementPrinter.Print(line), indent, keepsBlanks);
            keepsBlanks = !LineOrder.Has(block.Kind);
        }

        Print(block.Below, Body, keepsBlanks: false);
    }

    /// <summary>Whether a line belongs to the one above it: a list's bullets, and the reason for a promise.</summary>
    private static bool IsUnderALine(Statement line, BlockKind kind) =>
        line.Line.Tokens[0].Kind == TokenKind.Bullet || (kind == BlockKind.Records && line.Syntax is (BecauseLine or AgreedByLine));

    private void Print(Statement statement, Layout layout, int indent, bool keepsBlanks)
    {
        Print(statement.Above, indent, keepsBlanks);
        if (keepsBlanks && statement.HasBlankBefore)
        {
            _page.Blank();
        }

        _page.Add(indent, layout, statement);
    }

    private void Print(IEnumerable<Comment> comments, int indent, bool keepsBlanks)
    {
        foreach (var comment in comments)
        {
            if (keepsBlanks && comment.HasBlankBefore)
            {
                _page.Blank();
            }

            _page.Add(indent, comment);
        }
    }
}
