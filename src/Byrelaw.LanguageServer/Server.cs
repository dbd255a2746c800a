using System.Threading.Channels;

namespace Byrelaw.LanguageServer;

/// <summary>
/// Takes messages in their order. While more are waiting nothing is checked, so that of edits that come faster than
/// they can be checked only the last is; and an edit that comes alone is checked at once.
/// </summary>
internal sealed class Server
{
    private readonly MessageReader _reader;
    private readonly MessageWriter _writer;
    private readonly Action<string> _log;
    private readonly Methods _methods;
    private readonly EditorSession _session;
    private readonly Channel<Incoming> _waiting = Channel.CreateUnbounded<Incoming>(new UnboundedChannelOptions { SingleReader = true });

    /// <summary>Takes what the server reads from and writes to.</summary>
    /// <param name="input">The client's messages.</param>
    /// <param name="output">The server's.</param>
    /// <param name="log">Where it says what went wrong.</param>
    /// <param name="clock">Says what day it is.</param>
    public Server(Stream input, Stream output, Action<string> log, TimeProvider clock)
    {
        _log = log;
        _reader = new MessageReader(input, log);
        _writer = new MessageWriter(output);
        _methods = new Methods(_writer, log);
        _session = new EditorSession(_methods, _writer, clock, Wake, log);
        _session.Register();
    }

    /// <summary>Serves until the client says that it is done, or goes.</summary>
    /// <returns>0 after a proper end; 1 where the client went without one.</returns>
    public async Task<int> RunAsync()
    {
        try
        {
            return await ServeAsync();
        }
        finally
        {
            _session.End();
        }
    }

    private async Task<int> ServeAsync()
    {
        var receiving = Task.Run(ReceiveAsync);
        while (await _waiting.Reader.WaitToReadAsync())
        {
            while (_waiting.Reader.TryRead(out var message))
            {
                if (message.Method == "exit")
                {
                    return _methods.IsShutDown ? 0 : 1;
                }

                _methods.Take(message);
            }

            _methods.Idle();
        }

        await receiving;
        return 1;
    }

    /// <summary>A message that says nothing; after it there is a time when no message is waiting.</summary>
    private void Wake() => _waiting.Writer.TryWrite(Incoming.Nothing);

    private async Task ReceiveAsync()
    {
        try
        {
            while (await _reader.ReadAsync() is { } body)
            {
                Receive(body);
            }
        }
        catch (Exception exception) when (exception is IOException or ObjectDisposedException or OperationCanceledException)
        {
            _log($"the client's messages cannot be read any more: {exception.Message}");
        }
        finally
        {
            _waiting.Writer.Complete();
        }
    }

    private void Receive(byte[] body)
    {
        try
        {
            var message = Incoming.Parse(body);
            if (message.Method == "$/cancelRequest")
            {
                // Taken at once: the request may be waiting behind others, or under way.
                _methods.Cancel(message);
            }
            else
            {
                _methods.Expect(message);
                _waiting.Writer.TryWrite(message);
            }
        }
        catch (RequestException refused)
        {
            _log($"a message was refused: {refused.Message}");
            _writer.Error(null, refused);
        }
    }
}
