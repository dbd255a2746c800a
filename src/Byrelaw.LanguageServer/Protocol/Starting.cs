namespace Byrelaw.LanguageServer.Protocol;

/// <summary>What the client says of itself.</summary>
internal sealed record InitializeParams(string? RootUri, WorkspaceFolder[]? WorkspaceFolders, ClientCapabilities? Capabilities);

/// <summary>A folder that is open in the editor.</summary>
internal sealed record WorkspaceFolder(string Uri);

/// <summary>The part of what a client can that matters here.</summary>
internal sealed record ClientCapabilities(WorkspaceCapabilities? Workspace);

/// <summary>The part about files.</summary>
internal sealed record WorkspaceCapabilities(WatchCapabilities? DidChangeWatchedFiles);

/// <summary>Whether the client watches files when asked to.</summary>
internal sealed record WatchCapabilities(bool? DynamicRegistration);

/// <summary>What the server says of itself.</summary>
internal sealed record InitializeResult(ServerCapabilities Capabilities, ServerInfo ServerInfo);

/// <summary>The server's name.</summary>
internal sealed record ServerInfo(string Name, string Version);

/// <summary>What the server can.</summary>
internal sealed record ServerCapabilities(
    string PositionEncoding, SyncOptions TextDocumentSync, CompletionOptions CompletionProvider, bool HoverProvider, bool DefinitionProvider,
    bool ReferencesProvider, bool DocumentHighlightProvider, RenameOptions RenameProvider, bool DocumentSymbolProvider, bool FoldingRangeProvider,
    bool DocumentFormattingProvider, CodeActionOptions CodeActionProvider, SemanticTokensOptions SemanticTokensProvider);

/// <summary>How edits are sent: 2 is the changed stretches only.</summary>
internal sealed record SyncOptions(bool OpenClose, int Change);

/// <summary>After which characters suggestions are asked for.</summary>
internal sealed record CompletionOptions(string[] TriggerCharacters);

/// <summary>Whether a rename can be asked about first.</summary>
internal sealed record RenameOptions(bool PrepareProvider);

/// <summary>Which sorts of actions there are.</summary>
internal sealed record CodeActionOptions(string[] CodeActionKinds);

/// <summary>How words are classed.</summary>
internal sealed record SemanticTokensOptions(SemanticTokensLegend Legend, bool Full);

/// <summary>The classes of words by number, and what may be said of them besides.</summary>
internal sealed record SemanticTokensLegend(string[] TokenTypes, string[] TokenModifiers);

/// <summary>Asks the client to do something from now on.</summary>
internal sealed record RegistrationParams(Registration[] Registrations);

/// <summary>One such wish.</summary>
internal sealed record Registration(string Id, string Method, WatchOptions RegisterOptions);

/// <summary>Which files to watch.</summary>
internal sealed record WatchOptions(FileWatcher[] Watchers);

/// <summary>A pattern of paths.</summary>
internal sealed record FileWatcher(string GlobPattern);
