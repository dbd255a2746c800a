namespace Byrelaw.LanguageServer;

/// <summary>What the server can do, method by method.</summary>
internal sealed class EditorSession
{
    private readonly Methods _methods;
    private readonly MessageWriter _writer;
    private readonly Workspace _workspace = new();
    private readonly Publisher _publisher;
    private readonly Hovers _hovers;
    private readonly SecondLook _secondLook;
    private IReadOnlyList<SecondFindings> _found = [];
    private readonly HashSet<string> _edited = new(StringComparer.Ordinal);
    private bool _isStale;
    private bool _clientWatches;

    /// <summary>Takes what it speaks through.</summary>
    /// <param name="methods">What the client may call.</param>
    /// <param name="writer">What the server tells.</param>
    /// <param name="clock">Says what day it is.</param>
    /// <param name="wake">Has <see cref="Methods.Idle"/> called soon, from any thread.</param>
    /// <param name="log">Where it is said what went wrong.</param>
    public EditorSession(Methods methods, MessageWriter writer, TimeProvider clock, Action wake, Action<string> log)
    {
        _methods = methods;
        _writer = writer;
        _publisher = new Publisher(_workspace, writer);
        _hovers = new Hovers(_workspace, new RuleCounts(clock));
        _secondLook = new SecondLook(wake, log);
        _methods.WhenIdle = Check;
    }

    /// <summary>Registers every method.</summary>
    public void Register()
    {
        var json = LspJson.Default;
        _methods.Asked("initialize", json.InitializeParams, json.InitializeResult, Initialize);
        _methods.Told("initialized", json.JsonElement, _ => Watch());
        _methods.Asked("shutdown", json.JsonElement, json.String!, _ => Shutdown());
        _methods.Told("textDocument/didOpen", json.OpenParams, Open);
        _methods.Told("textDocument/didChange", json.ChangeParams, Change);
        _methods.Told("textDocument/didClose", json.DocumentParams, Close);
        _methods.Told("textDocument/didSave", json.DocumentParams, saved => Touch(FilePaths.Of(saved.TextDocument.Uri)));
        _methods.Told("workspace/didChangeWatchedFiles", json.WatchedParams, watched => Array.ForEach(watched.Changes, file => Touch(FilePaths.Of(file.Uri))));
        _methods.Asked("textDocument/hover", json.PlaceParams, json.Hover!, _hovers.At);
        _methods.Asked("textDocument/completion", json.PlaceParams, json.CompletionList, place => Completions.At(_workspace, place));
        _methods.Asked("textDocument/definition", json.PlaceParams, json.ListLocation, place => Definitions.Of(_workspace, place));
        _methods.Asked("textDocument/references", json.ReferenceParams, json.ListLocation, asked => References.Of(_workspace, asked));
        _methods.Asked("textDocument/documentHighlight", json.PlaceParams, json.ListDocumentHighlight, place => References.InDocument(_workspace, place));
        _methods.Asked("textDocument/prepareRename", json.PlaceParams, json.PrepareRenameResult!, place => Renames.Prepare(_workspace, place));
        _methods.Asked("textDocument/rename", json.RenameParams, json.WorkspaceEdit, asked => Renames.Make(_workspace, asked));
        _methods.Asked("textDocument/documentSymbol", json.DocumentParams, json.ListDocumentSymbol, asked => Symbols.Of(_workspace, asked.TextDocument));
        _methods.Asked("textDocument/foldingRange", json.DocumentParams, json.ListFoldingRange, asked => Folds.Of(_workspace, asked.TextDocument));
        _methods.Asked("textDocument/formatting", json.DocumentParams, json.ListTextEdit, asked => Formatting.Of(_workspace, asked.TextDocument));
        _methods.Asked("textDocument/codeAction", json.CodeActionParams, json.ListCodeAction, asked => CodeActions.For(_workspace, asked));
        _methods.Asked("textDocument/semanticTokens/full", json.DocumentParams, json.SemanticTokens, asked => WordClasses.Of(_workspace, asked.TextDocument));
    }

    private InitializeResult Initialize(InitializeParams parameters)
    {
        var folders = parameters.WorkspaceFolders?.Select(folder => folder.Uri) ?? (parameters.RootUri is { } root ? [root] : []);
        _workspace.Files.Folders.AddRange(folders.Select(FilePaths.Of).Where(Path.IsPathFullyQualified).Select(Path.TrimEndingDirectorySeparator));
        _clientWatches = parameters.Capabilities?.Workspace?.DidChangeWatchedFiles?.DynamicRegistration == true;
        _methods.IsInitialized = true;
        return new InitializeResult(Capabilities.All, new ServerInfo("byrelaw", typeof(EditorSession).Assembly.GetName().Version?.ToString(3) ?? ""));
    }

    private string? Shutdown()
    {
        _methods.IsShutDown = true;
        return null;
    }

    private void Watch()
    {
        if (_clientWatches)
        {
            var watch = new WatchOptions([new FileWatcher("**/*.byre")]);
            _writer.Request(
                "client/registerCapability", new RegistrationParams([new Registration("byrelaw-files", "workspace/didChangeWatchedFiles", watch)]),
                LspJson.Default.RegistrationParams);
        }
    }

    private void Open(OpenParams opened)
    {
        var path = FilePaths.Of(opened.TextDocument.Uri);
        _workspace.Files.Open[path] = new OpenDocument(opened.TextDocument.Uri, opened.TextDocument.Version, opened.TextDocument.Text);
        Touch(path);
        _edited.Add(path);
    }

    private void Change(ChangeParams changed)
    {
        var path = FilePaths.Of(changed.TextDocument.Uri);
        if (!_workspace.Files.Open.TryGetValue(path, out var document))
        {
            throw new RequestException(ErrorCode.InvalidParams, $"{changed.TextDocument.Uri} was edited but is not open");
        }

        document.Apply(changed.TextDocument.Version, changed.ContentChanges);
        Touch(path);
        _edited.Add(path);
    }

    private void Close(DocumentParams closed)
    {
        var path = FilePaths.Of(closed.TextDocument.Uri);
        _workspace.Files.Open.Remove(path);
        Touch(path);
    }

    /// <summary>The client is done, or gone.</summary>
    public void End() => _secondLook.GiveUp();

    /// <summary>Something may be different now; it is looked at when no message is waiting.</summary>
    private void Touch(string path)
    {
        _secondLook.GiveUp();
        _workspace.Changed(path);
        _isStale = true;
    }

    /// <summary>What reading tells is told at once; what the second look tells, together with that, when it is known.</summary>
    private void Check()
    {
        if (_isStale)
        {
            _isStale = false;
            _publisher.Publish(_edited, _found);
            _edited.Clear();
            _secondLook.Begin(_workspace.OpenReadings(), _workspace.Files);
        }
        else if (_secondLook.Take() is { } found)
        {
            _found = found;
            _publisher.Publish(_edited, _found);
        }
    }
}
