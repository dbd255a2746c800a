namespace Byrelaw.LanguageServer.Protocol;

/// <summary>Text in Markdown.</summary>
internal sealed record Markup(string Kind, string Value);

/// <summary>What is told of the word under the pointer.</summary>
internal sealed record Hover(Markup Contents, Range Range);

/// <summary>Everything that may stand at a place.</summary>
internal sealed record CompletionList(bool IsIncomplete, List<CompletionItem> Items);

/// <summary>One thing that may stand there.</summary>
internal sealed record CompletionItem(string Label, int Kind, string Detail, string SortText, string FilterText, TextEdit TextEdit);

/// <summary>Asks where a name is used.</summary>
internal sealed record ReferenceParams(DocumentName TextDocument, Position Position, ReferenceContext? Context);

/// <summary>Whether declarations count as uses.</summary>
internal sealed record ReferenceContext(bool IncludeDeclaration);

/// <summary>A place in the same document where the same name stands.</summary>
internal sealed record DocumentHighlight(Range Range, int Kind);

/// <summary>Asks to rename.</summary>
internal sealed record RenameParams(DocumentName TextDocument, Position Position, string NewName);

/// <summary>What would be renamed.</summary>
internal sealed record PrepareRenameResult(Range Range, string Placeholder);

/// <summary>One block of a document.</summary>
internal sealed record DocumentSymbol(string Name, string? Detail, int Kind, Range Range, Range SelectionRange, List<DocumentSymbol>? Children);

/// <summary>Lines that can be folded away.</summary>
internal sealed record FoldingRange(int StartLine, int EndLine, string? Kind = null);

/// <summary>Asks what can be done about a stretch of text.</summary>
internal sealed record CodeActionParams(DocumentName TextDocument, Range Range, CodeActionContext? Context);

/// <summary>Which sorts of actions are wanted.</summary>
internal sealed record CodeActionContext(string[]? Only);

/// <summary>One thing that can be done.</summary>
internal sealed record CodeAction(string Title, string Kind, List<EditorProblem> Diagnostics, bool IsPreferred, WorkspaceEdit Edit);

/// <summary>Classed words, five numbers each.</summary>
internal sealed record SemanticTokens(int[] Data);
