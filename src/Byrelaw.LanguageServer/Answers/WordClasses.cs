namespace Byrelaw.LanguageServer.Answers;

/// <summary>What every word of a document is, so that an editor can colour it by meaning.</summary>
internal static class WordClasses
{
    // Standard types of LSP 3.17, which every theme has colours for; their names are those of programming.
    public static readonly string[] Types =
        ["keyword", "variable", "event", "property", "type", "parameter", "interface", "function", "enumMember", "namespace", "class", "string", "number", "comment", "operator"];

    /// <summary>Five numbers a token: lines and characters from the one before, length, type, nothing.</summary>
    public static SemanticTokens Of(Workspace workspace, DocumentName document)
    {
        var data = new List<int>();
        if (workspace.Document(document) is not var (reading, file))
        {
            return new SemanticTokens([]);
        }

        var lines = TextLines.Of(file);
        var last = new Position(0, 0);
        foreach (var (span, @class) in reading.View.TokensOf(file))
        {
            if (Type(@class) is not { } type)
            {
                continue;
            }

            var at = lines.At(span.Start);
            data.AddRange([at.Line - last.Line, at.Line == last.Line ? at.Character - last.Character : at.Character, span.Length, Array.IndexOf(Types, type), 0]);
            last = at;
        }

        return new SemanticTokens([.. data]);
    }

    private static string? Type(TokenClass @class) => @class switch
    {
        TokenClass.Keyword => "keyword",
        TokenClass.Name => "variable",
        TokenClass.Event => "event",
        TokenClass.Measure or TokenClass.Fact => "property",
        TokenClass.Test => "type",
        TokenClass.Spell => "interface",
        TokenClass.Define => "function",
        TokenClass.DateName => "parameter",
        TokenClass.List => "namespace",
        TokenClass.Answer => "enumMember",
        TokenClass.RuleName => "class",
        TokenClass.Text => "string",
        TokenClass.Number or TokenClass.Date or TokenClass.Unit => "number",
        TokenClass.Comment => "comment",
        TokenClass.Sign => "operator",
        _ => null,
    };
}
