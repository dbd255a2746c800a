namespace Byrelaw.LanguageServer.Protocol;

/// <summary>A document is open in the editor.</summary>
internal sealed record OpenParams(OpenedDocument TextDocument);

/// <summary>An opened document and its text.</summary>
internal sealed record OpenedDocument(string Uri, int? Version, string Text);

/// <summary>A document was edited.</summary>
internal sealed record ChangeParams(DocumentName TextDocument, TextChange[] ContentChanges);

/// <summary>One edit; without a range the whole text is replaced.</summary>
internal sealed record TextChange(Range? Range, string Text);

/// <summary>Files changed on disk.</summary>
internal sealed record WatchedParams(FileChange[] Changes);

/// <summary>One file that changed.</summary>
internal sealed record FileChange(string Uri, int Type);

/// <summary>What is wrong in a document.</summary>
internal sealed record PublishParams(string Uri, int? Version, List<EditorProblem> Diagnostics);

/// <summary>One problem. Severity 1 is an error, 2 a warning.</summary>
internal sealed record EditorProblem(Range Range, int Severity, string Code, string Source, string Message);
