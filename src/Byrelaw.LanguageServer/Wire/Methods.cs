using System.Collections.Concurrent;
using System.Text.Json.Serialization.Metadata;

namespace Byrelaw.LanguageServer.Wire;

/// <summary>What the client may ask and tell, and who answers. A request is answered exactly once, whatever happens.</summary>
internal sealed class Methods(MessageWriter writer, Action<string> log)
{
    private readonly Dictionary<string, Action<Incoming>> _byName = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, CancellationTokenSource> _open = new(StringComparer.Ordinal);

    /// <summary>Whether the client has said hello.</summary>
    public bool IsInitialized { get; set; }

    /// <summary>Whether the client has said goodbye.</summary>
    public bool IsShutDown { get; set; }

    /// <summary>What to do when no message is waiting.</summary>
    public Action WhenIdle { get; set; } = () => { };

    /// <summary>Something that is only told.</summary>
    public void Told<T>(string method, JsonTypeInfo<T> type, Action<T> take) => _byName[method] = message => take(Read(message, type));

    /// <summary>Something that is answered at once.</summary>
    public void Asked<T, TResult>(string method, JsonTypeInfo<T> type, JsonTypeInfo<TResult> resultType, Func<T, TResult> answer) =>
        Asked(method, type, resultType, (parameters, _) => Task.FromResult(answer(parameters)));

    /// <summary>Something whose answer may take long; other messages are taken meanwhile.</summary>
    public void Asked<T, TResult>(string method, JsonTypeInfo<T> type, JsonTypeInfo<TResult> resultType, Func<T, CancellationToken, Task<TResult>> answer) =>
        _byName[method] = message =>
        {
            if (message.Id is not { } id)
            {
                log($"{method} came without an id and was not answered");
                return;
            }

            var cancelled = _open.TryGetValue(id.GetRawText(), out var source) ? source.Token : CancellationToken.None;
            cancelled.ThrowIfCancellationRequested();
            _ = Finish(id, answer(Read(message, type), cancelled), resultType);
        };

    /// <summary>A message has come and waits to be taken: from now on the client may cancel it.</summary>
    public void Expect(Incoming message)
    {
        if (message is { Method: not null, Id: { } id })
        {
            _open[id.GetRawText()] = new CancellationTokenSource();
        }
    }

    /// <summary>Takes a message. Whatever goes wrong is told to the client and the log; nothing is thrown.</summary>
    public void Take(Incoming message)
    {
        try
        {
            if (message.Method is { } method)
            {
                Check(message);
                if (_byName.TryGetValue(method, out var take))
                {
                    take(message);
                }
                else if (message.Id is not null)
                {
                    throw new RequestException(ErrorCode.MethodNotFound, $"this server does not know {method}");
                }
            }
        }
        catch (Exception exception)
        {
            Refuse(message.Id, exception, message.Method);
        }
    }

    /// <summary>Does what waits until no message is waiting.</summary>
    public void Idle()
    {
        try
        {
            WhenIdle();
        }
        catch (Exception exception)
        {
            Refuse(null, exception, "checking");
        }
    }

    /// <summary>The client no longer wants an answer.</summary>
    public void Cancel(Incoming message)
    {
        if (message.Parameters.ValueKind == JsonValueKind.Object && message.Parameters.TryGetProperty("id", out var id)
            && _open.TryGetValue(id.GetRawText(), out var source))
        {
            source.Cancel();
        }
    }

    private void Check(Incoming message)
    {
        if (!IsInitialized && message.Method != "initialize")
        {
            throw new RequestException(ErrorCode.ServerNotInitialized, "the first request is initialize");
        }

        if (IsShutDown && message.Id is not null)
        {
            throw new RequestException(ErrorCode.InvalidRequest, "after shutdown nothing is answered any more");
        }
    }

    private static T Read<T>(Incoming message, JsonTypeInfo<T> type)
    {
        try
        {
            return (message.Parameters.ValueKind == JsonValueKind.Undefined ? default : message.Parameters.Deserialize(type))
                ?? throw new RequestException(ErrorCode.InvalidParams, $"{message.Method} needs params");
        }
        catch (JsonException exception)
        {
            throw new RequestException(ErrorCode.InvalidParams, $"the params of {message.Method} cannot be read: {exception.Message}");
        }
    }

    private async Task Finish<T>(JsonElement id, Task<T> answer, JsonTypeInfo<T> type)
    {
        try
        {
            writer.Result(id, await answer, type);
        }
        catch (Exception exception)
        {
            Refuse(id, exception, "answering");
        }
        finally
        {
            _open.TryRemove(id.GetRawText(), out _);
        }
    }

    private void Refuse(JsonElement? id, Exception exception, string? doing)
    {
        var refused = exception as RequestException ?? (exception is OperationCanceledException
            ? new RequestException(ErrorCode.RequestCancelled, "cancelled")
            : new RequestException(ErrorCode.InternalError, $"something went wrong inside the program ({exception.GetType().Name}: {exception.Message})"));
        if (refused.Code == ErrorCode.InternalError || id is null)
        {
            log($"{doing}: {refused.Message}");
        }

        try
        {
            if (id is not null)
            {
                _open.TryRemove(id.Value.GetRawText(), out _);
                writer.Error(id, refused);
            }
        }
        catch (Exception gone) when (gone is IOException or ObjectDisposedException)
        {
            log($"the client does not read any more: {gone.Message}");
        }
    }
}
