using System.Collections.Concurrent;
using Nerdbank.Streams;
using StreamJsonRpc;

namespace Byrelaw.LanguageServer.Tests.Support;

/// <summary>
/// An editor: speaks to the server through StreamJsonRpc, a JSON-RPC library that has nothing to do with the server's
/// own reading and writing of messages.
/// </summary>
internal sealed class Editor : IAsyncDisposable
{
    private readonly JsonRpc _rpc;
    private readonly Client _client = new();
    private readonly StringWriter _log = new();
    private readonly Task<int> _server;
    private readonly Dictionary<string, (int Version, string Text)> _documents = [];

    private Editor(TimeProvider? clock)
    {
        var (ours, theirs) = FullDuplexStream.CreatePair();
        _server = Task.Run(() => LanguageServerProgram.Run(theirs, theirs, _log, clock));
        _rpc = new JsonRpc(new HeaderDelimitedMessageHandler(ours, new SystemTextJsonFormatter()));
        _rpc.AddLocalRpcTarget(_client, null);
        _rpc.StartListening();
    }

    /// <summary>What the server has said on its log.</summary>
    public string Log => _log.ToString();

    /// <summary>The requests that the server made.</summary>
    public IReadOnlyCollection<string> Registered => _client.Registered;

    /// <summary>Starts a server and says hello.</summary>
    public static async Task<Editor> StartAsync(string? folder = null, TimeProvider? clock = null)
    {
        var editor = new Editor(clock);
        await editor.AskAsync("initialize", new
        {
            processId = Environment.ProcessId,
            rootUri = folder is null ? null : Uri(folder),
            capabilities = new { workspace = new { didChangeWatchedFiles = new { dynamicRegistration = true } } },
        });
        await editor.TellAsync("initialized", new { });
        return editor;
    }

    /// <summary>The address of a path.</summary>
    public static string Uri(string path) => new Uri(path).AbsoluteUri;

    /// <summary>A request and its answer.</summary>
    public Task<JsonElement> AskAsync(string method, object parameters, CancellationToken cancelled = default) =>
        _rpc.InvokeWithParameterObjectAsync<JsonElement>(method, parameters, cancelled);

    /// <summary>The message with which a request is refused.</summary>
    public async Task<string> RefusalAsync(string method, object parameters) =>
        (await Should.ThrowAsync<RemoteRpcException>(() => AskAsync(method, parameters))).Message;

    /// <summary>A notification.</summary>
    public Task TellAsync(string method, object parameters) => _rpc.NotifyWithParameterObjectAsync(method, parameters);

    /// <summary>Opens a document and waits for what is wrong with it.</summary>
    public async Task<string> OpenAsync(string path, string text)
    {
        _documents[path] = (1, text);
        await TellAsync("textDocument/didOpen", new { textDocument = new { uri = Uri(path), languageId = "byrelaw", version = 1, text } });
        return await ProblemsAsync(path);
    }

    /// <summary>Replaces a stretch of text that stands once in a document, as an editor tells it, and waits for what is wrong then.</summary>
    public async Task<string> EditAsync(string path, string old, string @new)
    {
        var (version, text) = _documents[path];
        var at = text.IndexOf(old, StringComparison.Ordinal);
        at.ShouldBeGreaterThanOrEqualTo(0, $"{path} does not say {old}");
        _documents[path] = (version + 1, text[..at] + @new + text[(at + old.Length)..]);
        await TellAsync("textDocument/didChange", new
        {
            textDocument = new { uri = Uri(path), version = version + 1 },
            contentChanges = new[] { new { range = new { start = Position(text, at), end = Position(text, at + old.Length) }, text = @new } },
        });
        return await ProblemsAsync(path);
    }

    /// <summary>Puts another text in the place of a document's, and waits for what is wrong then.</summary>
    public async Task<string> ReplaceAsync(string path, string text)
    {
        var version = _documents[path].Version + 1;
        _documents[path] = (version, text);
        await TellAsync("textDocument/didChange", new { textDocument = new { uri = Uri(path), version }, contentChanges = new[] { new { text } } });
        return await ProblemsAsync(path);
    }

    /// <summary>Closes a document.</summary>
    public Task CloseAsync(string path)
    {
        _documents.Remove(path);
        return TellAsync("textDocument/didClose", new { textDocument = new { uri = Uri(path) } });
    }

    /// <summary>What is wrong with the document's present version, one problem a line: <c>line:from-to severity code message</c>.</summary>
    public Task<string> ProblemsAsync(string path) => _client.ProblemsAsync(Uri(path), _documents.TryGetValue(path, out var document) ? document.Version : null);

    /// <summary>Waits until what is told of any file starts with a text; returns the first line.</summary>
    public Task<string> ProblemsAsync(string path, string start) => _client.ProblemsAsync(Uri(path), start);

    /// <summary>All that was told of a file so far, in order.</summary>
    public IEnumerable<(int? Version, string Text)> Told(string path) => _client.All(Uri(path));

    /// <summary>What a document says.</summary>
    public string Text(string path) => _documents[path].Text;

    /// <summary>A request about a place, which <c>|</c> marks in a piece of the document's text.</summary>
    public object At(string path, string marked, object? more = null)
    {
        var text = _documents[path].Text;
        var cursor = marked.IndexOf('|', StringComparison.Ordinal);
        var at = text.IndexOf(marked.Remove(cursor, 1), StringComparison.Ordinal);
        at.ShouldBeGreaterThanOrEqualTo(0, $"{path} does not say {marked}");
        var request = new Dictionary<string, object> { ["textDocument"] = new { uri = Uri(path) }, ["position"] = Position(text, at + cursor) };
        foreach (var property in more?.GetType().GetProperties() ?? [])
        {
            request[property.Name] = property.GetValue(more)!;
        }

        return request;
    }

    /// <summary>Says goodbye; the server's exit code.</summary>
    public async Task<int> EndAsync()
    {
        await _rpc.InvokeAsync("shutdown");
        await _rpc.NotifyAsync("exit");
        return await _server;
    }

    /// <summary>Goes without a word.</summary>
    public async ValueTask DisposeAsync()
    {
        _rpc.Dispose();
        await _server;
        _client.Dispose();
    }

    private static object Position(string text, int offset)
    {
        var start = offset == 0 ? 0 : text.LastIndexOf('\n', offset - 1) + 1;
        return new { line = text.AsSpan(0, start).Count('\n'), character = offset - start };
    }

    /// <summary>What the server calls.</summary>
    private sealed class Client : IDisposable
    {
        private readonly ConcurrentDictionary<string, (int? Version, string Text)> _told = [];
        private readonly ConcurrentQueue<(string Uri, int? Version, string Text)> _all = [];
        private readonly SemaphoreSlim _changed = new(0);

        public ConcurrentQueue<string> Registered { get; } = [];

        [JsonRpcMethod("textDocument/publishDiagnostics", UseSingleObjectParameterDeserialization = true)]
        public void Publish(JsonElement told)
        {
            var version = told.TryGetProperty("version", out var number) ? number.GetInt32() : (int?)null;
            var (uri, text) = (told.GetProperty("uri").GetString()!, string.Concat(told.GetProperty("diagnostics").EnumerateArray().Select(Line)));
            _all.Enqueue((uri, version, text));
            _told[uri] = (version, text);
            _changed.Release();
        }

        [JsonRpcMethod("client/registerCapability", UseSingleObjectParameterDeserialization = true)]
        public void Register(JsonElement wanted) => Registered.Enqueue(wanted.GetProperty("registrations")[0].GetProperty("method").GetString()!);

        public IEnumerable<(int? Version, string Text)> All(string uri) => _all.Where(told => told.Uri == uri).Select(told => (told.Version, told.Text));

        public Task<string> ProblemsAsync(string uri, int? version) => WhenToldAsync(uri, told => told.Version == version);

        public Task<string> ProblemsAsync(string uri, string start) =>
            WhenToldAsync(uri, told => start.Length == 0 ? told.Text.Length == 0 : told.Text.StartsWith(start, StringComparison.Ordinal));

        private async Task<string> WhenToldAsync(string uri, Predicate<(int? Version, string Text)> isIt)
        {
            (int? Version, string Text) told = (null, "nothing");
            while (!_told.TryGetValue(uri, out told) || !isIt(told))
            {
                (await _changed.WaitAsync(TimeSpan.FromSeconds(30))).ShouldBeTrue($"of {uri} something else was told: {told}");
            }

            return told.Text;
        }

        public void Dispose() => _changed.Dispose();

        private static string Line(JsonElement problem)
        {
            var (start, end) = (problem.GetProperty("range").GetProperty("start"), problem.GetProperty("range").GetProperty("end"));
            return $"{start.GetProperty("line")}:{start.GetProperty("character")}-{end.GetProperty("character")} "
                + $"{(problem.GetProperty("severity").GetInt32() == 1 ? "error" : "warning")} {problem.GetProperty("code").GetString()} {problem.GetProperty("message").GetString()}\n";
        }
    }
}
