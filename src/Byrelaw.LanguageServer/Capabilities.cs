namespace Byrelaw.LanguageServer;

/// <summary>What the server tells the client it can do (LSP 3.17).</summary>
internal static class Capabilities
{
    /// <summary>All of it.</summary>
    public static readonly ServerCapabilities All = new(
        PositionEncoding: "utf-16",
        TextDocumentSync: new SyncOptions(OpenClose: true, Change: 2),
        CompletionProvider: new CompletionOptions([" ", "\""]),
        HoverProvider: true,
        DefinitionProvider: true,
        ReferencesProvider: true,
        DocumentHighlightProvider: true,
        RenameProvider: new RenameOptions(PrepareProvider: true),
        DocumentSymbolProvider: true,
        FoldingRangeProvider: true,
        DocumentFormattingProvider: true,
        CodeActionProvider: new CodeActionOptions(["quickfix"]),
        SemanticTokensProvider: new SemanticTokensOptions(new SemanticTokensLegend(WordClasses.Types, []), Full: true));
}
