namespace Byrelaw.LanguageServer.Answers;

/// <summary>What can be folded away: blocks, and comments of several lines.</summary>
internal static class Folds
{
    /// <summary>The folds of a document.</summary>
    public static List<FoldingRange> Of(Workspace workspace, DocumentName document)
    {
        if (workspace.Document(document) is not var (reading, file))
        {
            return [];
        }

        var folds = reading.View.OutlineOf(file).Select(item => Fold(TextLines.Range(item.Span), null)).ToList();
        Protocol.Range? comment = null;
        foreach (var range in reading.View.TokensOf(file).Select(token => token.Class == TokenClass.Comment ? TextLines.Range(token.Span) : null).Append(null))
        {
            var goesOn = comment is not null && range is not null && range.Start.Line == comment.End.Line + 1;
            if (!goesOn && comment is not null)
            {
                folds.Add(Fold(comment, "comment"));
            }

            comment = goesOn ? comment! with { End = range!.End } : range;
        }

        return folds.FindAll(fold => fold.EndLine > fold.StartLine);
    }

    private static FoldingRange Fold(Protocol.Range range, string? kind) => new(range.Start.Line, range.End.Line, kind);
}
